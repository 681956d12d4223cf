//! Runs in the page before it opens: lists its controls, finds one again, and reads what is shown.

/// Puts `window.walker` into the page. Refers to nothing outside itself, because it is sent there as text.
export function install() {
  const CONTROLS = 'button, a[href], input, select, textarea, summary, [role=button], [tabindex="0"]';
  const frame = () => new Promise((done) => requestAnimationFrame(() => done()));
  const rest = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));
  /// What can be pressed: the page, or the dialog over it.
  const scope = () => document.querySelector('dialog[open]') ?? document.body;
  const numberless = (words) => words.replace(/[\d.,:½¼¾]+/g, '#').replace(/\s+/g, ' ').trim();
  /// What is far off the screen is not laid out, and would have neither words nor names.
  const layOut = () => document.querySelectorAll('main .card').forEach((card) => { card.style.contentVisibility = 'visible'; });

  /// The print dialog would hold the page.
  window.print = () => {};

  /// Waits until all that loads has come and is drawn; figures follow a slow change after the frame.
  async function settled() {
    await frame();
    const end = performance.now() + 8000;
    while (document.getElementById('waiting') || document.querySelector('.loading')) {
      if (performance.now() > end) throw new Error('the page does not settle');
      await frame();
    }
    await frame();
    await rest(50);
    await frame();
  }

  /// The words of an element, without those that are only drawn.
  function text(element) {
    if (!element?.querySelector('[aria-hidden=true]')) return element?.textContent.trim() ?? '';
    const heard = element.cloneNode(true);
    heard.querySelectorAll('[aria-hidden=true]').forEach((drawn) => drawn.remove());
    return heard.textContent.trim();
  }

  /// What assistive technology calls an element (W3C, Accessible Name and Description Computation 1.2, in the
  /// order of its steps). The browser's own word takes milliseconds for each, so it is worked out here.
  function nameOf(element) {
    const by = element.getAttribute('aria-labelledby')?.split(' ').map((id) => text(document.getElementById(id))).join(' ');
    const label = [...(element.labels ?? [])].map(text).join(' ').trim();
    const isBox = element.matches('input, select, textarea');
    return by || element.ariaLabel?.trim() || label || (isBox ? '' : text(element)) || element.title;
  }

  /// The landmarks, cards, rows and sets of answers that hold an element, by their names.
  function around(element) {
    const names = [];
    for (let at = element.parentElement?.closest(AROUND); at; at = at.parentElement?.closest(AROUND)) {
      names.unshift(at.matches('fieldset') ? text(at.querySelector('legend')) : at.ariaLabel ?? '');
    }
    return names.filter(Boolean).map(numberless).join('/');
  }
  const AROUND = 'section, nav, fieldset, [role=group], [role=region]';

  function described(element) {
    const type = element.tagName === 'INPUT' ? element.type : element.tagName.toLowerCase();
    const name = nameOf(element);
    const isDialog = element.closest('dialog') !== null;
    const own = type === 'radio' ? `${element.name} ${name}` : element.id || name;
    return {
      key: `${around(element)} ${type} ${type === 'radio' || !element.id ? numberless(own) : own}`,
      kind: `${isDialog ? numberless(nameOf(scope())) : ''} ${type} ${numberless(own)}`,
      type, name, list: element.className,
      isClose: isDialog && name === 'Close',
      isInDialog: isDialog,
      isDecimal: element.inputMode === 'decimal',
      isAround: !isDialog && element.closest('main') === null,
      isDisabled: element.matches(':disabled') || element.ariaDisabled === 'true' || element.readOnly === true,
      accept: element.accept ?? '',
    };
  }

  /// Every control in reach, each with a key that finds it again in a page of the same state.
  function controls() {
    layOut();
    const times = new Map();
    const all = [...scope().querySelectorAll(CONTROLS)].filter((one) => one.checkVisibility());
    return all.map((element) => {
      const found = described(element);
      const count = times.get(found.key) ?? 0;
      times.set(found.key, count + 1);
      return { ...found, key: count ? `${found.key} ~${count}` : found.key, element };
    });
  }

  function find(key) {
    return controls().find((one) => one.key === key)?.element;
  }

  /// Opens every fold of the place, those within folds too.
  async function unfold() {
    for (let turn = 0; turn < 4; turn += 1) {
      const folded = [...document.querySelectorAll('main details:not([open]) > summary')];
      if (folded.length === 0) return;
      for (const summary of folded) summary.click();
      await settled();
    }
  }

  /// What is pressed for a control: itself, or the label of one that is not drawn.
  function pressed(element) {
    return element.matches('input.visually-hidden, .choice input') ? element.labels?.[0] ?? element : element;
  }

  /// Brings a control to the middle; gives the point to press, and what covers it there, if anything.
  async function aim(key) {
    // What is laid out only when it is seen moves the rest a little: the second time it stays.
    for (let turn = 0; turn < 2; turn += 1) {
      const element = find(key);
      if (!element) return undefined;
      pressed(element).scrollIntoView({ block: 'center', behavior: 'instant' });
      // A link that only the keyboard reaches shows when it has the focus.
      if (element.matches('.skip')) element.focus();
      await frame();
    }
    const element = find(key);
    if (!element) return undefined;
    const target = pressed(element);
    const { left, top, width, height } = target.getClientRects()[0] ?? target.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    const hit = document.elementFromPoint(x, y);
    const isHit = hit && (target.contains(hit) || [...(element.labels ?? [])].some((label) => label.contains(hit)));
    return { x, y, covered: isHit ? undefined : `${hit?.tagName ?? 'nothing'}.${hit?.className ?? ''} “${hit?.textContent.slice(0, 40) ?? ''}”` };
  }

  /// What a box shows, and what is said to be wrong with it.
  function box(key) {
    const element = find(key);
    if (!element) return undefined;
    const words = document.getElementById(element.getAttribute('aria-describedby') ?? '');
    return { text: element.value, isWrong: element.getAttribute('aria-invalid') === 'true', said: words?.textContent ?? '' };
  }

  /// All text: visible, in boxes, and for screen readers.
  function words() {
    layOut();
    const heard = [...document.querySelectorAll('[aria-label], [title]')].flatMap((one) => [one.ariaLabel ?? '', one.title]);
    const typed = [...document.querySelectorAll('input, textarea')].map((one) => one.value);
    const unseen = [...document.querySelectorAll('.visually-hidden')].map((one) => one.textContent);
    return [document.title, document.body.innerText, ...unseen, ...heard, ...typed].join('\n');
  }

  /// The page as it is after a press.
  function seen() {
    const all = controls().map(({ element, ...found }) => found);
    const place = text(document.querySelector('nav [aria-current=page]'));
    const formula = text(document.querySelector('header [aria-haspopup=dialog]'));
    return { controls: all, words: words(), place, formula, isDialog: document.querySelector('dialog[open]') !== null };
  }

  window.walker = { settled, unfold, aim, box, find, seen };
}
