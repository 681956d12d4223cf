"""The translations, read by an independent gettext library."""

import re
import string
from pathlib import Path

import polib
import pytest

FOLDER = Path(__file__).parents[2] / "src/text/language"
LANGUAGES = ["es", "ja"]


def placeholders(text):
    """Placeholders in braces, as Python's own formatter reads them."""
    return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}


@pytest.mark.parametrize("tag", LANGUAGES)
def test_every_text_is_translated_with_the_same_placeholders(tag):
    catalogue = polib.pofile(str(FOLDER / f"{tag}.po"))
    assert catalogue.metadata["Language"] == tag
    assert len(catalogue) > 1000
    assert not catalogue.untranslated_entries() and not catalogue.fuzzy_entries()
    for entry in catalogue:
        assert placeholders(entry.msgid) == placeholders(entry.msgstr), entry.msgid


def test_the_languages_have_the_same_texts():
    texts = [{entry.msgid for entry in polib.pofile(str(FOLDER / f"{tag}.po"))} for tag in LANGUAGES]
    assert texts[0] == texts[1]


def test_japanese_is_written_in_japanese():
    """Unicode blocks Hiragana, Katakana, CJK: every sentence that is one in English has some."""
    catalogue = polib.pofile(str(FOLDER / "ja.po"))
    sentences = [entry for entry in catalogue if entry.msgid.endswith(".") and entry.msgid.count(" ") > 3
                 and not re.search(r"\d{4}|\d:\d", entry.msgid)]
    assert len(sentences) > 300
    bare = [entry.msgid for entry in sentences if not re.search("[\u3040-\u30ff\u4e00-\u9fff]", entry.msgstr)]
    assert not bare
