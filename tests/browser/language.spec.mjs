//! Languages: the page in Spanish and Japanese, by the browser's wish or the user's.

import assert from 'node:assert/strict';
import { breaches, cached, ready } from './launch.mjs';
import { test } from './registry.mjs';
import { Formula } from './pages/formula.mjs';
import { Settings } from './pages/settings.mjs';
import { drawn, holds } from './pages/app_page.mjs';

/// Words of the page in each language: places in their order, and the word of the settings.
const PLACES = {
  en: ['Formula', 'Batch', 'Heat', 'Chocolate', 'Day'],
  es: ['Fórmula', 'Tanda', 'Calor', 'Chocolate', 'Día'],
  ja: ['配合', '仕込み', '温度', 'チョコレート', '段取り'],
};

function places(page) {
  return page.getByRole('navigation').getByRole('link').allInnerTexts();
}

test('a browser that asks for Spanish or Japanese is answered in it, with its numbers', async (session) => {
  for (const [locale, tag] of [['es-ES', 'es'], ['ja-JP', 'ja'], ['fr-FR', 'en']]) {
    const { page } = await session.open('phone', { locale });
    assert.equal(await new Settings(page).language(), tag);
    assert.deepEqual((await places(page)).map((word) => word.trim()), PLACES[tag]);
    // Numbers as the browser's own Intl writes them in that locale.
    const half = await page.evaluate((own) => new Intl.NumberFormat(own).format(0.5)[1], locale);
    const shown = await page.getByRole('main').getByRole('textbox').evaluateAll((boxes) => boxes.map((box) => box.value));
    const parts = shown.filter((text) => /^\d+[.,]\d+$/.test(text));
    assert.ok(parts.length > 3 && parts.every((text) => text.includes(half)), `${locale}: ${parts}`);
  }
});

test('another language is chosen in the settings, holds at once and at the next visit, and loses nothing', async (session) => {
  const { page } = await session.open('phone', { locale: 'en-GB' });
  await drawn(page);
  const box = page.getByRole('main').getByRole('textbox').first();
  await box.fill('12 blocks');
  const settings = new Settings(page);
  await settings.open();
  await settings.choose('Español', 'es');
  assert.equal(await page.getByRole('dialog').isVisible(), true, 'the settings stay open');
  assert.deepEqual((await places(page)).map((word) => word.trim()), PLACES.es);
  await page.keyboard.press('Escape');
  await holds(page.getByRole('main').getByRole('textbox').first(), '12 blocks', 'what cannot be read stays');
  await page.reload();
  await ready(page);
  assert.equal(await settings.language(), 'es');
  await settings.open();
  await settings.choose('日本語', 'ja');
  assert.deepEqual((await places(page)).map((word) => word.trim()), PLACES.ja);
  await settings.choose('English', 'en');
  assert.deepEqual((await places(page)).map((word) => word.trim()), PLACES.en);
});

test('a language is there in flight mode, though it was never spoken before', async (session) => {
  const { page, context } = await session.open('phone');
  await cached(page);
  await context.setOffline(true);
  const settings = new Settings(page);
  await settings.open();
  await settings.choose('日本語', 'ja');
  await page.reload();
  await ready(page);
  assert.equal(await settings.language(), 'ja');
  assert.deepEqual((await places(page)).map((word) => word.trim()), PLACES.ja);
});

test('texts that do not come are told, and the page stays as it is', async (session) => {
  const { page, context } = await session.open('phone', { allow: [/Failed to load resource/, /registration blocked/], serviceWorkers: 'block' });
  await context.route(/\/es\.[0-9a-f]+\.txt/, (route) => route.abort());
  const settings = new Settings(page);
  await settings.open();
  await settings.dialog.getByText('Español', { exact: true }).click();
  await settings.dialog.getByText('The texts of this language did not come.').waitFor();
  assert.equal(await settings.language(), 'en');
});

test('every place stands in each language without a breach of the accessibility rules or a sideways scroll', async (session) => {
  for (const locale of ['es-ES', 'ja-JP']) {
    const { page } = await session.open('phone', { locale });
    const formula = new Formula(page);
    for (const place of ['formula', 'batch', 'heat', 'chocolate', 'day']) {
      await page.evaluate((at) => { location.hash = at; }, place);
      await page.waitForFunction((at) => document.querySelector('nav [aria-current=page]')?.getAttribute('href') === `#${at}`, place);
      await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor({ state: 'attached' });
      await drawn(page);
      assert.deepEqual(await breaches(page), [], `${locale} ${place}`);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `${locale} ${place} scrolls sideways`);
      await formula.saysNothingWrong();
    }
  }
}, { seconds: 120 });
