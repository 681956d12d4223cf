//! Every place, dialog, bench step, visit and page for paper is in the page's language, names of parts and ingredients included.

import assert from 'node:assert/strict';
import { Buffer } from 'node:buffer';
import { readFileSync } from 'node:fs';
import { catalogue, Foreign } from './catalogues.mjs';
import { ready } from './launch.mjs';
import { drawn } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const PLACES = ['formula', 'batch', 'heat', 'chocolate', 'day'];
const WHERE = { es: { locale: 'es-ES', timezoneId: 'Europe/Madrid' }, ja: { locale: 'ja-JP', timezoneId: 'Asia/Tokyo' } };
/// Friday, 27 March 2026, 17:00 in London.
const NOW = new Date('2026-03-27T17:00:00Z');
/// A formula whose part names are the English defaults, as the first release linked it.
const LINK = readFileSync(new URL('../sheet/samples/v1.examples.links.txt', import.meta.url), 'utf8').split('\n')[0];
/// What is typed into the search: how it begins in each language.
const TYPED = { es: ['harina', 'leche', 'chocolate', 'xyzzy'], ja: ['粉', '乳', 'チョコ', 'xyzzy'] };

/// Runs in the page: every text of it, and where it is. Sources name works as they were printed; rules are
/// written in the signs of arithmetic.
function texts() {
  const found = [];
  const skipped = 'script, style, noscript, .source, .rule, .sum, .square-code';
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const where = (element) => {
    const names = [];
    for (let at = element; at && at !== document.body && names.length < 4; at = at.parentElement) {
      names.unshift(`${at.tagName.toLowerCase()}${typeof at.className === 'string' && at.className ? `.${at.className.split(' ')[0]}` : ''}`);
    }
    return names.join(' > ');
  };
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (node.data.trim() && !node.parentElement.closest(skipped)) found.push([node.data, where(node.parentElement)]);
  }
  for (const element of document.querySelectorAll('[aria-label], [title], [placeholder], input, textarea')) {
    const all = [element.ariaLabel, element.title, element.placeholder, element.matches('input:not([type=radio]):not([type=checkbox]), textarea') ? element.value : ''];
    for (const text of all) if (text?.trim()) found.push([text, where(element)]);
  }
  found.push([document.title, 'title']);
  return found;
}

class Walk {
  constructor(tag, page, foreign = new Foreign(tag)) {
    Object.assign(this, { tag, page, foreign, found: new Map(), read: 0 });
  }

  /// Reads all that is on the page now.
  async look(at, typed = []) {
    await drawn(this.page);
    const all = await this.page.evaluate(texts);
    this.read += all.length;
    for (const [text, where] of all) {
      const foreign = typed.some((own) => text.includes(own)) ? undefined : this.foreign.of(text);
      const key = `${foreign}: “${text.replaceAll(/\s+/g, ' ').trim().slice(0, 160)}”`;
      if (foreign && !this.found.has(key)) this.found.set(key, `${at}: ${where}`);
    }
  }

  /// Goes to a place by its address and opens every row, those within rows too.
  async go(place) {
    await this.page.evaluate((at) => { location.hash = at; }, place);
    await this.page.waitForFunction((at) => document.querySelector('nav [aria-current=page]')?.getAttribute('href') === `#${at}`, place);
    await this.page.getByRole('main').getByRole('heading', { level: 1 }).waitFor({ state: 'attached' });
    await this.page.waitForFunction(() => !document.querySelector('.loading'));
    await this.unfold();
  }

  async unfold() {
    for (let turn = 0; turn < 4; turn += 1) {
      const folded = await this.page.locator('main details:not([open]) > summary, dialog[open] details:not([open]) > summary')
        .evaluateAll((all) => all.map((one) => one.click()).length);
      await drawn(this.page);
      await drawn(this.page);
      if (folded === 0) return;
    }
  }

  /// The dialog that a press opened, read and closed.
  async dialog(at, inside = async () => {}) {
    const dialog = this.page.locator('dialog[open]');
    await dialog.waitFor();
    await this.page.waitForFunction(() => !document.querySelector('dialog .loading'));
    await this.unfold();
    await this.look(at);
    await inside(dialog);
    await dialog.evaluate((one) => one.close());
    await dialog.waitFor({ state: 'detached' }).catch(() => {});
    await drawn(this.page);
  }

  /// Opens all that opens a dialog in the place.
  async dialogs(place) {
    const openers = this.page.locator('main [aria-haspopup=dialog], header .keys [aria-haspopup=dialog]');
    for (let at = 0; at < await openers.count(); at += 1) {
      const opener = openers.nth(at);
      if (!(await opener.isVisible())) continue;
      await opener.evaluate((one) => one.click());
      await this.dialog(`${place}, dialog ${at}`);
    }
  }

  /// Nothing of another language was met.
  ends(least) {
    assert.ok(this.read > least, `${this.read} texts were read`);
    const all = [...this.found].map(([text, at]) => `${text}\n    at ${at}`);
    assert.equal(all.length, 0, `${this.tag}: ${all.length} texts of another language\n${all.join('\n')}`);
  }
}

async function begin(session, tag, at = '') {
  const { page } = await session.open('phone', { ...WHERE[tag], serviceWorkers: 'block', allow: [/registration blocked/], at, before: () => { window.print = () => {}; } });
  await page.clock.setFixedTime(NOW);
  await page.reload();
  await ready(page);
  return new Walk(tag, page);
}

for (const tag of ['es', 'ja']) {
  test(`every place, with all rows open and all that opens from it, is in ${tag}`, async (session) => {
    const walk = await begin(session, tag);
    for (const place of PLACES) {
      await walk.go(place);
      await walk.look(place);
      await walk.dialogs(place);
    }
    walk.ends(5000);
  }, { seconds: 400 });

  test(`settings, shelf, sharing, paper, and the search for an ingredient are in ${tag}`, async (session) => {
    const walk = await begin(session, tag);
    const { page } = walk;
    const tools = page.locator('header .row button:not([aria-disabled=true])');
    const count = await tools.count();
    for (let at = 0; at < count; at += 1) {
      await tools.nth(at).click();
      await walk.dialog(`tool ${at}`, async (dialog) => {
        if (await dialog.locator('textarea, input[type=file]').count() < 2) return;
        // Sharing: the two pages for paper lie outside the dialog.
        for (let page = 0; page < 2; page += 1) {
          await dialog.locator('h3 + .buttons').evaluateAll((all, page) => all.find((one) => one.children.length === 2 && /A5/.test(one.textContent))?.children[page].click(), page);
          await walk.look(`paper ${page}`);
        }
      });
    }
    // The buttons at the foot of a part: what is added there.
    await walk.go('formula');
    const add = page.locator('main section .buttons button, main .add').filter({ visible: true });
    for (let at = 0; at < await add.count(); at += 1) {
      await add.nth(at).evaluate((one) => one.click());
      await drawn(page);
      if (await page.locator('dialog[open]').count() === 0) continue;
      await walk.dialog(`add ${at}`, async (dialog) => {
        const box = dialog.getByRole('searchbox');
        if (await box.count() === 0) return;
        for (const typed of TYPED[tag]) {
          await box.fill(typed);
          await walk.look(`search ${typed}`, ['xyzzy']);
        }
        await dialog.locator('.picker button').last().click();
        await walk.unfold();
        await walk.look('own ingredient', ['xyzzy']);
      });
    }
    walk.ends(1500);
  }, { seconds: 200 });

  test(`each step of the bench is in ${tag}`, async (session) => {
    const walk = await begin(session, tag);
    const { page } = walk;
    await walk.go('day');
    await page.locator('main button.primary').first().evaluate((one) => one.click());
    const bench = page.locator('.bench');
    await bench.waitFor();
    let steps = 0;
    for (let before = ''; steps < 60; steps += 1) {
      await walk.unfold();
      await bench.locator('[aria-expanded=false]').evaluateAll((all) => all.forEach((one) => one.click()));
      await walk.look(`bench ${steps}`);
      const now = await bench.innerText();
      if (now === before) break;
      before = now;
      // What is not ready is begun from the row that says so.
      await bench.locator('.bench-buttons .primary, .otherwise .buttons .button').last().evaluate((one) => one.click());
      await drawn(page);
      if (await bench.count() === 0) break;
    }
    assert.ok(steps > 15, `${steps} steps`);
    await walk.unfold();
    await walk.look('log');
    walk.ends(1500);
  }, { seconds: 200 });

  test(`a visit through a link is in ${tag}`, async (session) => {
    const walk = await begin(session, tag, `#loaf=${LINK}`);
    await walk.unfold();
    await walk.look('visit');
    walk.ends(60);
  });
}

/// A recipe as its page has it, its lines with the names the page gives them. Words and measures: common practice.
const RECIPES = {
  es: [['500 g de harina de fuerza', 'Harina blanca de fuerza'], ['300 ml de leche entera', 'Leche entera'], ['2 cucharadas de azúcar', 'Azúcar blanco'],
    ['1 cucharadita de sal', 'Sal'], ['25 g de levadura fresca', 'Levadura fresca'], ['1 huevo', 'Huevo']],
  ja: [['強力粉 ２５０ｇ', '強力粉'], ['牛乳 180ml', '牛乳'], ['砂糖 大さじ2', 'グラニュー糖'], ['塩 小さじ1', '塩'], ['ドライイースト 3g', 'インスタントドライイースト'],
    ['バター 20g', '無塩バター']],
};
/// What the page calls something, by what it is in English.
const called = (tag, english) => catalogue(tag).get(english);

for (const tag of ['es', 'ja']) {
  test(`a recipe in ${tag} is read from a file, and each line is on the page by its name`, async (session) => {
    const walk = await begin(session, tag);
    const { page } = walk;
    await page.locator('header .tools button').nth(2).click();
    const recipe = { '@type': 'Recipe', recipeIngredient: RECIPES[tag].map(([line]) => line) };
    await page.getByLabel(called(tag, 'Open a recipe')).setInputFiles({ name: 'recipe.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(recipe)) });
    const lines = page.locator('.recipe-lines li');
    await lines.first().waitFor();
    assert.equal(await page.locator('.recipe-lines .not-taken').count(), 0);
    for (const [at, [, food]] of RECIPES[tag].entries()) assert.ok((await lines.nth(at).innerText()).includes(food), await lines.nth(at).innerText());
    await page.getByRole('button', { name: called(tag, 'Add to the shelf') }).click();
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    for (const [, food] of RECIPES[tag]) await page.getByRole('group', { name: food, exact: true }).waitFor();
    await walk.look('formula');
    walk.ends(50);
  });

  test(`the search for an ingredient finds it by the words of ${tag}`, async (session) => {
    const { page } = await begin(session, tag);
    await page.getByRole('button', { name: called(tag, 'Add an ingredient') }).first().click();
    const box = page.getByRole('searchbox');
    await box.waitFor();
    const searches = { es: [['harina de fuerza', 'Harina blanca de fuerza'], ['azucar', 'Azúcar blanco'], ['maicena', 'Almidón de maíz']], ja: [['バター', '無塩バター'], ['砂糖', 'グラニュー糖'], ['たまご', '卵']] };
    for (const [typed, first] of searches[tag]) {
      await box.fill(typed);
      await drawn(page);
      assert.equal(await page.locator('dialog .pick span').first().innerText(), first, typed);
    }
  });
}

test('a text that lacks its translation is found', async (session) => {
  const lacking = new Map([...catalogue('es')].map(([english, own]) => [english, english === 'Final dough' ? '' : own]));
  const foreign = new Foreign('es', { es: lacking, ja: catalogue('ja') });
  assert.equal(foreign.of('Final dough'), 'Final dough');
  assert.equal(new Foreign('es').of('Masa final'), undefined);
  assert.equal(new Foreign('ja').of('Masa final'), 'masa final');
  // On the page itself: its catalogue without the translation of one part.
  const { page, context } = await session.open('phone', { ...WHERE.es, serviceWorkers: 'block', allow: [/registration blocked/] });
  await context.route(/\/es\.[0-9a-f]+\.txt/, async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, body: (await answer.text()).replaceAll(/^(Room)\t.*$/gm, '$1\t$1') });
  });
  await page.reload();
  await ready(page);
  const walk = new Walk('es', page);
  await walk.go('heat');
  await walk.look('heat');
  assert.ok([...walk.found.keys()].some((text) => text.startsWith('Room:')), [...walk.found.keys()].join());
});
