"""Decodes the body of a link by the specification of postcard's wire format."""

import struct


class Body:
    """Reads bytes one after another."""

    def __init__(self, data):
        self.data, self.at = data, 0

    def take(self, count):
        piece = self.data[self.at:self.at + count]
        assert len(piece) == count
        self.at += count
        return piece

    def byte(self):
        return self.take(1)[0]

    def varint(self):
        value = shift = 0
        while True:
            byte = self.byte()
            value |= (byte & 0x7F) << shift
            shift += 7
            if byte < 0x80:
                return value

    def text(self):
        return self.take(self.varint()).decode("utf-8")

    def maybe(self, read):
        return read() if self.byte() else None

    def many(self, read):
        return [read() for _ in range(self.varint())]

    def number(self):
        """Whole hundredths (zigzag), whole hundredths of a percent, or all eight bytes."""
        kind = self.varint()
        if kind == 0:
            zigzag = self.varint()
            return ((zigzag >> 1) ^ -(zigzag & 1)) / 100
        if kind == 1:
            return self.varint() / 100 / 100
        assert kind == 2
        return struct.unpack("<d", self.take(8))[0]

    def line(self):
        own, number = self.varint(), None
        number = self.byte() if own else self.varint()
        return {"own": bool(own), "ingredient": number, "mass_g": self.number(),
                "counts_as_flour": self.maybe(lambda: bool(self.byte())),
                "poured_g": self.maybe(self.number)}

    def stream(self):
        return {"kind": self.byte(), "name": self.text(), "steam_g": self.maybe(self.number),
                "lines": self.many(self.line)}

    def own(self):
        return {"name": self.text(), "role": self.byte(),
                "label": [self.maybe(self.number) for _ in range(9)],
                "allergens": list(self.take(self.varint()))}

    def wanted(self):
        numbers = {0: "n", 1: "n", 2: "vn", 3: "n", 4: "bbn", 5: "vvn"}
        way = self.varint()
        read = {"n": self.number, "v": self.varint, "b": self.byte}
        return way, [read[kind]() for kind in numbers[way]]

    def warmth(self):
        return {"stream": self.byte(), "line": self.maybe(self.byte), "at_c": self.number()}

    def phase(self):
        return [self.number(), self.number(), self.byte(), self.byte()]

    def heat(self):
        """The heat settings, field by field: n a number, m an optional one."""
        fields = [self.number() if kind == "n" else self.maybe(self.number) for kind in "nmnmmnn"]
        fields += [self.byte(), self.byte(), self.number(), self.number(), self.many(self.phase)]
        return fields + [self.number() if kind == "n" else self.maybe(self.number) for kind in "nnnmmmn"]

    def tin(self):
        """Lengths in metres: rectangle 5, round 3, ring 4, cups 3 with their number, tray 2."""
        shape = self.varint()
        lengths = [self.number() for _ in range([5, 3, 4, 3, 2][shape])]
        cups = self.varint() if shape == 3 else None
        return {"shape": shape, "lengths_m": lengths, "cups": cups, "lidded": bool(self.byte()),
                "count": self.varint(), "rows": self.maybe(self.varint),
                "room_cm3_per_g": self.maybe(self.number), "rise": self.number()}

    def sheet(self):
        sheet = {"name": self.text(), "bread": self.byte(), "own": self.many(self.own),
                 "streams": self.many(self.stream), "wanted": self.wanted(),
                 "losses": [self.number() for _ in range(5)], "pieces": self.varint(),
                 "syrup_at_c": self.number()}
        sheet["heat"] = self.maybe(self.heat)
        sheet["warmth"] = self.many(self.warmth)
        sheet["tin"] = self.maybe(self.tin)
        sheet["note"] = self.text()
        assert self.at == len(self.data)
        return sheet
