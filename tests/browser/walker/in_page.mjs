//! Runs in the page before it opens: lists its controls, finds one again, and reads what is shown.

/// Puts `window.walker` into the page. Refers to nothing outside itself, because it is sent there as text.
export function install() {
  const CONTROLS = 'button, a[href], input, select, textarea, summary, [role=button], [tabindex="0"]';
  const frame = () => new Promise((done) => requestAnimationFrame(() => done()));
  const rest = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));
  /// What can be pressed: the page, or the dialog over it.
  const scope = () => document.querySelector('dialog[open]') ?? document.body;
  const numberless = (words) => words.replace(/[\d.,:½¼¾]+/g, '#').replace(/\s+/g, ' ').trim();
  const isCardLaidOut = (card) => { card.style.contentVisibility = 'visible'; };

  /// The print dialog would hold the page.
  window.print = () => {};

  /// Waits until all that loads has come and is drawn; figures follow a slow change after the frame.
  async function settled() {
    await frame();
    const end = performance.now() + 8000;
    while (document.getElementById('waiting') || document.querySelector('.coming')) {
      if (performance.now() > end) throw new Error('the page does not settle');
      await frame();
    }
    await frame();
    await rest(50);
    await frame();
  }

  /// The landmark, card, row or set of answers that holds an element, by its name.
  function around(element) {
    const names = [];
    for (let at = element.parentElement?.closest(AROUND); at; at = at.parentElement?.closest(AROUND)) names.unshift(at.computedName);
    return names.filter(Boolean).map(numberless).join('/');
  }
  const AROUND = 'section, nav, fieldset, [role=group], [role=region], details, dialog';

  function described(element) {
    const type = element.tagName === 'INPUT' ? element.type : element.tagName.toLowerCase();
    const name = element.computedName;
    const isDialog = element.closest('dialog') !== null;
    const own = type === 'radio' ? `${element.name} ${name}` : element.id || name;
    return {
      key: `${around(element)} ${type} ${type === 'radio' || !element.id ? numberless(own) : own}`,
      kind: `${isDialog ? numberless(scope().computedName) : ''} ${type} ${numberless(own)}`,
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

  /// Brings a control to the middle; gives the point to press, and what covers it there, if anything.
  async function aim(key) {
    const element = find(key);
    if (!element) return undefined;
    const isUnseen = element.matches('input.heard, .choice input');
    const target = isUnseen ? element.labels?.[0] ?? element : element;
    target.scrollIntoView({ block: 'center', behavior: 'instant' });
    await frame();
    target.scrollIntoView({ block: 'center', behavior: 'instant' });
    // A link that only the keyboard reaches shows when it has the focus.
    if (element.matches('.skip')) element.focus();
    await frame();
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

  /// Every word that is seen, heard or stands in a box.
  function words() {
    // What is far off the screen is not laid out, and its words would be left out.
    document.querySelectorAll('main .card').forEach(isCardLaidOut);
    const heard = [...document.querySelectorAll('[aria-label], [title]')].flatMap((one) => [one.ariaLabel ?? '', one.title]);
    const typed = [...document.querySelectorAll('input, textarea')].map((one) => one.value);
    const unseen = [...document.querySelectorAll('.heard')].map((one) => one.textContent);
    return [document.title, document.body.innerText, ...unseen, ...heard, ...typed].join('\n');
  }

  /// The page as it is after a press.
  function seen() {
    const all = controls().map(({ element, ...found }) => found);
    return { controls: all, words: words(), dialog: document.querySelector('dialog[open]')?.computedName };
  }

  window.walker = { settled, unfold, aim, box, find, seen };
}
