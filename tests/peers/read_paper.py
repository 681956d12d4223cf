"""Reads a printed page (PDF) or a picture: number of pages, size, square codes.

`read_paper.py FILE [PICTURE]` prints one JSON object; the first page is saved as PICTURE if given.
PDFium renders the page and ZXing reads the codes, so none of our code checks its own output.
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
    answer = {
        "pages": len(document),
        "mm": [round(points / 72 * 25.4) for points in page.get_size()],
        "text": page.get_textpage().get_text_bounded(),
    }
    return picture, answer


def main():
    path, save_as = sys.argv[1], sys.argv[2:]
    picture, answer = of_pdf(path) if path.endswith(".pdf") else (Image.open(path).convert("L"), {})
    answer["codes"] = [found.text for found in zxingcpp.read_barcodes(picture)]
    # The bounding box of all ink, as fractions of the page: left, top, right, bottom.
    ink = ImageChops.invert(picture).point(lambda level: 255 if level > 40 else 0).getbbox()
    if ink:
        width, height = picture.size
        answer["ink"] = [ink[0] / width, ink[1] / height, ink[2] / width, ink[3] / height]
    if save_as:
        picture.save(save_as[0])
    print(json.dumps(answer))


if __name__ == "__main__":
    main()
