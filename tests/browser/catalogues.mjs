//! The catalogues of the languages, and what of a text belongs to another language than the page's.

import { readFileSync } from 'node:fs';

const FOLDER = new URL('../../src/text/language/', import.meta.url);
/// Letters of Japanese: kana and kanji (Unicode blocks Hiragana, Katakana, CJK Unified Ideographs).
const JAPANESE = /[\u3041-\u30fa\u4e00-\u9fff]/;
/// Latin punctuation inside a Japanese sentence: one that was put together from pieces.
const MIXED = /[\u3041-\u30fa\u4e00-\u9fff)][.,;]( |$)|[.,;] ?[\u3041-\u30fa\u4e00-\u9fff]/;
/// What languages call themselves, wherever the page is.
const OWN_NAMES = new Set(['English', 'Español', '日本語']);
/// A printed work by its year: its title stays in the language it was printed in.
const WORK = /\b(1[89]|20)\d\d\b/;

/// Pairs of English text and translation (gettext's format of catalogues).
export function catalogue(tag) {
  const pairs = new Map();
  let [key, kind] = ['', ''];
  for (const line of readFileSync(new URL(`${tag}.po`, FOLDER), 'utf8').split('\n')) {
    const [, word, text] = /^(msgid|msgstr)? ?(".*")$/.exec(line) ?? [];
    if (text === undefined) continue;
    if (word === 'msgid') key = '';
    kind = word ?? kind;
    if (kind === 'msgid') key += JSON.parse(text);
    else pairs.set(key, (word ? '' : pairs.get(key)) + JSON.parse(text));
  }
  pairs.delete('');
  return pairs;
}

const words = (text) => text.replaceAll(/\{\w*\}/g, ' ').toLowerCase().match(/\p{L}{2,}/gu) ?? [];
const wordsOf = (texts) => new Set([...texts].filter((text) => !WORK.test(text)).flatMap(words));

/// Finds what is not in a language of the page: a whole English text that has a translation, a word that
/// only the texts of another language have, Japanese letters outside Japanese.
export class Foreign {
  constructor(tag, all = { es: catalogue('es'), ja: catalogue('ja') }) {
    this.tag = tag;
    this.works = [...all[tag].values()].filter((text) => WORK.test(text));
    this.whole = new Set([...all[tag]].filter(([english, own]) => english !== own && words(english).length > 0)
      .map(([english]) => english.trim()));
    const own = wordsOf(all[tag].values());
    const other = tag === 'ja' ? all.es.values() : [];
    this.words = new Set([...wordsOf(all[tag].keys()), ...wordsOf(other)].filter((word) => !own.has(word) && !JAPANESE.test(word)));
  }

  /// What of this text is of another language; undefined where nothing is.
  of(text) {
    const plain = text.replaceAll(/\s+/g, ' ').trim();
    if (plain === 'Softcrumb' || this.works.includes(plain)) return undefined;
    if (OWN_NAMES.has(plain) || /^(https?:\/\/|#?loaf=)/.test(plain)) return undefined;
    if (this.whole.has(plain)) return plain;
    if (this.tag !== 'ja' && JAPANESE.test(plain)) return plain;
    if (this.tag === 'ja' && MIXED.test(plain)) return `Latin punctuation: ${MIXED.exec(plain)[0]}`;
    const found = words(plain).filter((word) => this.words.has(word));
    return found.length > 0 ? found.join(' ') : undefined;
  }
}
