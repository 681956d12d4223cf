//! For every hand and eye: no breach of the accessibility rules, keys alone, large text, narrow screens, big targets.

import assert from 'node:assert/strict';
import { breaches as breaks } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { each } from './pages/views.mjs';
import { drawn, holds } from './pages/app_page.mjs';
import { test } from './registry.mjs';

for (const screen of ['phone', 'wide']) {
  for (const colorScheme of ['light', 'dark']) {
    test(`no place and no dialog breaks an accessibility rule (${screen}, ${colorScheme})`, async (session) => {
      const breaches = [];
      await each(await session.open(screen, { colorScheme }), async (name, page) => {
        breaches.push(...(await breaks(page.page)).map((breach) => `${name}: ${breach}`));
      });
      assert.deepEqual(breaches, []);
    }, { seconds: 180 });
  }
}

test('a box that cannot be read and a trial break no rule either', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.type(page.weight('Final dough', 'Salt'), 'some');
  assert.deepEqual(await breaks(page.page), []);
});

/// What is too wide for the screen, named by its words.
function tooWide(page) {
  return page.evaluate(() => {
    const across = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    const dialog = document.querySelector('dialog[open]');
    const inside = dialog ? dialog.scrollWidth - dialog.clientWidth : 0;
    if (across <= 0 && inside <= 0) return [];
    return [...(dialog ?? document.body).querySelectorAll('*')]
      .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
      .slice(0, 5).map((element) => `${element.tagName}.${element.className}: ${element.textContent.slice(0, 40)}`);
  });
}

/// Texts that do not fit into their element: cut off, or overflowing it.
function clipped(page) {
  return page.evaluate(() => {
    const root = document.querySelector('dialog[open]') ?? document.body;
    return [...root.querySelectorAll('button, a, label, p, span, h1, h2, h3, legend, td, th, dd, dt, li, input, select')]
      // What ends in dots is whole one tap away.
      .filter((element) => !(getComputedStyle(element).textOverflow === 'ellipsis' && element.closest('.head button')))
      // A box for words scrolls within itself; one for a number must show all of it.
      .filter((element) => !element.matches('input:not([inputmode=decimal])'))
      .filter((element) => element.clientWidth > 1 && element.checkVisibility({ visibilityProperty: true }) && !element.closest('.visually-hidden, .skip'))
      .filter((element) => {
        const cuts = getComputedStyle(element).overflowY === 'hidden';
        return element.scrollWidth > element.clientWidth + 1 || (cuts && element.scrollHeight > element.clientHeight + 2);
      })
      .map((element) => `${element.tagName}.${element.className}#${element.id}: ${String(element.value || element.textContent).slice(0, 40)}`);
  });
}

for (const [name, how] of [
  ['320 px wide', { viewport: { width: 320, height: 640 } }],
  ['text of twice the size', { viewport: { width: 360, height: 640 }, large: true }],
  ['text of twice the size on a wide screen', { viewport: { width: 1280, height: 800 }, large: true }],
]) {
  test(`nothing scrolls sideways and no word is cut off: ${name}`, async (session) => {
    const { large, ...more } = how;
    const visit = await session.open('phone', more);
    // The browser's own setting for larger text: 16 px is the usual size.
    if (large) await (await visit.context.newCDPSession(visit.page)).send('Page.setFontSizes', { fontSizes: { standard: 32, fixed: 26 } });
    await drawn(visit.page);
    const size = await visit.page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
    assert.equal(size, large ? '32px' : '16px');
    const found = [];
    await each(visit, async (name, page) => {
      found.push(...(await tooWide(page.page)).map((one) => `${name}: too wide: ${one}`));
      found.push(...(await clipped(page.page)).map((one) => `${name}: cut off: ${one}`));
    });
    assert.deepEqual(found, []);
  }, { seconds: 120 });
}

// WCAG 2.2, 2.5.5: 44 px; all but the rows of a list of weights have more.
test('everything that can be tapped is at least 48 px high and wide', async (session) => {
  const small = [];
  await each(await session.open('phone'), async (name, page) => {
    const found = await page.page.evaluate(() => {
      const root = document.querySelector('dialog[open]') ?? document.body;
      const targets = [...root.querySelectorAll('button, a[href], input, select, textarea, summary, [tabindex="0"]')]
        .filter((element) => element.checkVisibility({ visibilityProperty: true }) && !element.matches('.skip'));
      return targets.flatMap((target) => {
        // A box is as large as the label that it stands in: a tap anywhere there goes to it.
        const label = target.matches('input') ? target.closest('label') : undefined;
        const { width, height } = (label ?? target).getBoundingClientRect();
        const said = target.ariaLabel ?? target.innerText ?? '';
        const least = target.matches('.weigh') ? 43.5 : 47.5;
        return width < least || height < least ? [`${target.id || said || target.className}: ${width} × ${height}`] : [];
      });
    });
    small.push(...found.map((one) => `${name}: ${one}`));
  });
  assert.deepEqual(small, []);
}, { seconds: 120 });

test('everything has a name for those who listen, and no name stands for two things', async (session) => {
  const found = [];
  await each(await session.open('phone'), async (name, page) => {
    const tree = await page.page.locator('body').ariaSnapshot();
    for (const line of tree.split('\n')) {
      if (/^\s*- (button|link|textbox|searchbox|combobox|radio|checkbox|spinbutton|img|region|dialog|heading)\b(?! ")/.test(line)) {
        found.push(`${name}: ${line.trim()}`);
      }
    }
    const ids = await page.page.evaluate(() => {
      const all = [...document.querySelectorAll('[id]')].map((element) => element.id);
      return all.filter((id, at) => all.indexOf(id) !== at);
    });
    found.push(...ids.map((id) => `${name}: the id ${id} twice`));
    const boxes = [...tree.matchAll(/^\s*- (?:textbox|combobox) "([^"]+)"/gm)].map((match) => match[1]);
    if (boxes.length > 0) assert.ok(new Set(boxes).size > 0);
  });
  assert.deepEqual(found, []);
}, { seconds: 120 });

/// What the keys go to now, in words.
function focused(page) {
  return page.evaluate(() => {
    const element = document.activeElement;
    return { id: element.id, words: (element.ariaLabel ?? element.innerText ?? '').trim(), tag: element.tagName };
  });
}

test('with the keys alone: skip to the figures, change one, open its working, come back, undo', async (session) => {
  const { page } = await session.open('wide');
  const formula = new Formula(page);
  const press = async (key) => {
    await page.keyboard.press(key);
    await drawn(page);
  };
  await press('Tab');
  assert.equal((await focused(page)).words, 'Skip to the figures');
  await press('Enter');
  assert.equal((await focused(page)).tag, 'H1');
  const salt = formula.weight('Final dough', 'Salt');
  for (let step = 0; step < 120 && !(await salt.evaluate((box) => box === document.activeElement)); step += 1) await press('Tab');
  assert.ok(await salt.evaluate((box) => box === document.activeElement), 'the box is reached by Tab');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('9.6');
  await drawn(page);
  await holds(formula.percent('Final dough', 'Salt'), '2');
  await press('Tab');
  assert.ok(await formula.percent('Final dough', 'Salt').evaluate((box) => box === document.activeElement), 'its percentage is next');
  await formula.keyFigure('Salt').focus();
  await press('Enter');
  await formula.dialog.waitFor();
  assert.equal((await focused(page)).words, 'Salt');
  for (let step = 0; step < 12; step += 1) {
    await press('Tab');
    const inside = await page.evaluate(() => document.activeElement === document.body || document.activeElement.closest('dialog') !== null);
    assert.ok(inside, 'the keys stay in the dialog');
  }
  await press('Escape');
  await formula.dialog.waitFor({ state: 'hidden' });
  assert.match((await focused(page)).words, /Salt/, 'the focus is back on the figure');
  await formula.tool('Undo').focus();
  await press('Enter');
  await holds(salt, '8.6');
  assert.ok(await formula.tool('Undo').evaluate((button) => button === document.activeElement), 'undo keeps the focus at its end');
});

test('what has the focus can be seen: it has an outline, and nothing that sticks lies over it', async (session) => {
  for (const screen of ['phone', 'wide']) {
    const { page } = await session.open(screen);
    const hidden = [];
    for (let step = 0; step < 70; step += 1) {
      await page.keyboard.press('Tab');
      await drawn(page);
      const found = await page.evaluate(() => {
        const element = document.activeElement;
        if (element === document.body) return undefined;
        const field = element.closest('.field') ?? element;
        const ring = [element, field, element.closest('label') ?? element].some((one) => getComputedStyle(one).outlineStyle !== 'none');
        const box = element.getBoundingClientRect();
        const over = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
        const seen = over && (element.contains(over) || over.contains(element) || element.closest('label') === over.closest('label'));
        return ring && seen ? undefined : `${element.id || element.ariaLabel || element.innerText}: ${ring ? 'covered' : 'no outline'}`;
      });
      if (found) hidden.push(`${screen}: ${found}`);
    }
    assert.deepEqual(hidden, []);
  }
}, { seconds: 120 });

test('every dialog opens on its title, closes by Escape, and gives the focus back', async (session) => {
  const { page } = await session.open('wide');
  const { DIALOGS } = await import('./pages/views.mjs');
  const formula = new Formula(page);
  for (const [name, open] of Object.entries(DIALOGS).filter(([name]) => name !== 'an own ingredient')) {
    await open(formula);
    await drawn(page);
    assert.equal((await focused(page)).tag, 'H2', `${name}: the focus is on the title`);
    assert.notEqual((await focused(page)).words, '', name);
    await page.keyboard.press('Escape');
    await formula.dialog.waitFor({ state: 'hidden' });
    await drawn(page);
    assert.notEqual((await focused(page)).tag, 'BODY', `${name}: the focus is back where it was`);
  }
});

test('forced colours and reduced motion: all is still told apart, and nothing moves', async (session) => {
  const visit = await session.open('phone', { forcedColors: 'active', reducedMotion: 'reduce' });
  await each(visit, async (name, page) => {
    const moving = await page.page.evaluate(() => document.getAnimations().length);
    assert.equal(moving, 0, name);
    await page.saysNothingWrong();
  });
  const current = await new Formula(visit.page).place('Formula').evaluate((link) =>
    [link, ...link.children].some((part) => ['outlineStyle', 'borderStyle'].some((kind) => getComputedStyle(part)[kind] !== 'none')));
  assert.ok(current, 'the place one is at is marked without colour');
});
