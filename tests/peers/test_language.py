"""The catalogues of the other languages, read by a gettext library that is none of ours."""

import re
import string
from pathlib import Path

import polib
import pytest

FOLDER = Path(__file__).parents[2] / "src/text/language"
LANGUAGES = ["es", "ja"]


def places(text):
    """Places in braces as Python's own formatter reads them; those without a name by their number."""
    names, nameless = set(), 0
    for _, name, _, _ in string.Formatter().parse(text):
        if name == "":
            nameless += 1
            names.add(str(nameless))
        elif name is not None:
            names.add(name)
    return names


@pytest.mark.parametrize("tag", LANGUAGES)
def test_every_text_is_translated_with_the_same_places(tag):
    catalogue = polib.pofile(str(FOLDER / f"{tag}.po"))
    assert catalogue.metadata["Language"] == tag
    assert len(catalogue) > 1000
    assert not catalogue.untranslated_entries() and not catalogue.fuzzy_entries()
    for entry in catalogue:
        assert places(entry.msgid) == places(entry.msgstr), entry.msgid


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
