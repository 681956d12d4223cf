"""Finds or builds the worksheet program, and sends it many documents in one run."""

import json
import os
import pathlib
import subprocess

import pytest

import generated

ROOT = pathlib.Path(__file__).resolve().parents[2]


def find_worksheet():
    """The path of the worksheet program: SOFTCRUMB_WORKSHEET, else what cargo builds."""
    named = os.environ.get("SOFTCRUMB_WORKSHEET")
    if named:
        return named
    built = subprocess.run(
        ["cargo", "build", "--quiet", "--example", "worksheet", "--message-format=json"],
        cwd=ROOT, check=True, stdout=subprocess.PIPE, text=True,
    )
    for line in built.stdout.splitlines():
        message = json.loads(line)
        if message.get("executable") and message["target"]["name"] == "worksheet":
            return message["executable"]
    raise RuntimeError("cargo built no worksheet")


@pytest.fixture(scope="session")
def ask():
    """A function that gives the results of documents, or of lines of text or bytes."""
    program = find_worksheet()

    def answer(documents):
        lines = [as_bytes(document) for document in documents]
        ran = subprocess.run(
            [program], input=b"\n".join(lines) + b"\n", check=True, stdout=subprocess.PIPE,
        )
        written = ran.stdout.decode("utf-8").splitlines()
        answers = [json.loads(line, parse_constant=refuse) for line in written]
        assert len(answers) == len(documents)
        return answers

    return answer


def as_bytes(document):
    """A document as a line of bytes."""
    if isinstance(document, bytes):
        return document
    text = document if isinstance(document, str) else json.dumps(document)
    return text.encode("utf-8")


def refuse(constant):
    """Fails on NaN and infinity in a result."""
    raise AssertionError(f"{constant} in a result")


@pytest.fixture(scope="session")
def pairs(ask):
    """Four hundred generated documents, each with its result."""
    documents = generated.documents(400)
    return list(zip(documents, ask(documents), strict=True))
