"""Reads a printed page (PDF) or a picture: how many pages, how large, what square codes it carries.

`read_paper.py FILE [PICTURE]` prints one JSON object; the first page is kept as PICTURE where named.
The page is drawn by PDFium and the codes are read by ZXing: nothing of ours reads what we drew.
"""

import json
import sys

import pypdfium2
import zxingcpp
from PIL import Image, ImageChops

DOTS_PER_INCH = 300


def of_pdf(path):
    document = pypdfium2.PdfDocument(path)
    page = document[0]
    picture = page.render(scale=DOTS_PER_INCH / 72, grayscale=True).to_pil().convert("L")
    told = {
        "pages": len(document),
        "mm": [round(points / 72 * 25.4) for points in page.get_size()],
        "text": page.get_textpage().get_text_bounded(),
    }
    return picture, told


def main():
    path, keep = sys.argv[1], sys.argv[2:]
    picture, told = of_pdf(path) if path.endswith(".pdf") else (Image.open(path).convert("L"), {})
    told["codes"] = [found.text for found in zxingcpp.read_barcodes(picture)]
    # The box around all ink, in parts of the page: left, top, right, bottom.
    ink = ImageChops.invert(picture).point(lambda level: 255 if level > 40 else 0).getbbox()
    if ink:
        width, height = picture.size
        told["ink"] = [ink[0] / width, ink[1] / height, ink[2] / width, ink[3] / height]
    if keep:
        picture.save(keep[0])
    print(json.dumps(told))


if __name__ == "__main__":
    main()
