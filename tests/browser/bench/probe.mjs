//! What is put into both pages before they load: it notes, inside the page, when the page answers.

/// Runs in the page. `kind`: 'click' for the baseline page's button, 'type' for our weight box.
export function probe(kind) {
  const noted = { present: 0, ready: 0, frames: [], changes: 0 };
  window.noted = noted;
  let waiting = null;
  const soon = (work) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = work;
    channel.port2.postMessage(0);
  };
  window.probed = () => (kind === 'click'
    ? document.querySelector('button')
    : [...document.querySelectorAll('main label')].find((label) => label.textContent.endsWith(', weight'))?.control);

  // Usable: the page answers a change in its text. Tried once a task, from inside, so that no driver's time is in it.
  const knock = () => {
    if (noted.ready) return;
    const element = window.probed();
    if (element && kind === 'click') element.click();
    if (element && kind === 'type') {
      element.value += '1';
      element.dispatchEvent(new InputEvent('input', { bubbles: true }));
    }
    setTimeout(knock, 4);
  };
  new MutationObserver((changes) => {
    if (!noted.present) {
      if (!window.probed()) return;
      noted.present = performance.now();
      soon(knock);
      return;
    }
    noted.ready ||= performance.now();
    if (waiting) noted.changes = Math.max(noted.changes, changes.length);
  }).observe(document, { childList: true, subtree: true, characterData: true, attributes: true });

  // From the moment of the key or tap to the task after the next frame, which has been drawn by then.
  const from = (event) => {
    if (!event.isTrusted || waiting !== null) return;
    waiting = event.timeStamp;
    requestAnimationFrame(() => soon(() => {
      noted.frames.push(performance.now() - waiting);
      waiting = null;
    }));
  };
  addEventListener(kind === 'click' ? 'click' : 'keydown', (event) => {
    if (kind === 'click' || /^\d$/.test(event.key)) from(event);
  }, true);
}
