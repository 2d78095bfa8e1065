"""How a block-shaped loaf or slab is cut, a second time: boxes in boxes, in closed form; mm and ml.

In the order of the hands: the top is planed; rows are cut through the whole loaf, its sides trimmed; each row is trimmed and
cut in columns; the bars' cut faces are planed. Cuts follow each other from the low end; what remains at the high end is cut
off the last bar. A trimming cut's kerf lies within the trim.
"""
import math
from fractions import Fraction as F

BAR, OFFCUT, KERF, PLANING = "bar", "offcut", "kerf", "planing"


def bars_in(usable, size, kerf, planing):
    """n bars lose n - 1 kerfs between them and two planings each; a hundredth of a millimetre does not cost a bar."""
    return math.floor((usable + F(1, 100) + kerf) / (size + 2 * planing + kerf))


def strips_of(whole_length, trim, size, kerf, planing):
    """(what becomes of it, from, to) from the low end on, which stands at minus half the length; and how many bars."""
    n = bars_in(whole_length - 2 * trim, size, kerf, planing)
    strips, at = [], -whole_length / 2

    def go(goes, width):
        nonlocal at
        if width > 0:
            strips.append((goes, at, at + width))
            at += width

    lost = min(trim, kerf)
    go(OFFCUT, trim - lost)
    go(KERF, lost)
    for i in range(n):
        go(KERF, kerf if i else F(0))
        go(PLANING, planing)
        go(BAR, size)
        go(PLANING, planing)
    remnant = max(F(0), whole_length / 2 - trim - at)
    go(KERF, min(remnant, kerf))
    go(OFFCUT, remnant - min(remnant, kerf))
    go(KERF, lost)
    go(OFFCUT, trim - lost)
    return strips, n


class CutLoaf:
    """A block with upright walls, poured to `line`; x and y from its middle, z from its floor."""

    def __init__(self, length, width, line, planed, columns_along, columns, rows):
        """`columns` and `rows`: (trim, size, kerf, planing) of the cuts along `columns_along` and across it; a size of None leaves
        all between the trims as one bar, uncut and unplaned."""
        self.line, self.top, self.area = line, line - planed, length * width
        self.along = columns_along
        long_way, across = (length, width) if columns_along == "x" else (width, length)
        self.column_strips, self.columns = strips_of(long_way, *columns)
        if rows[1] is None:
            trim, _, kerf, _ = rows
            rows = trim, across - 2 * trim, kerf, F(0)
        self.row_strips, self.rows = strips_of(across, *rows)

    def ends(self):
        """ml that end as bars, offcuts, kerf and planing."""
        ml = {goes: F(0) for goes in (BAR, OFFCUT, KERF, PLANING)}
        ml[PLANING] += self.area * (self.line - self.top)
        for row, low, high in self.row_strips:
            for column, start, end in self.column_strips:
                goes = row if row in (OFFCUT, KERF) else column if column in (OFFCUT, KERF) or row == BAR else PLANING
                ml[goes] += (high - low) * (end - start) * self.top
        return {goes: float(volume) / 1000 for goes, volume in ml.items()}

    def bars(self):
        """Each bar as ((x, x), (y, y), (z, z)), row after row."""
        boxes = []
        for row, low, high in self.row_strips:
            for column, start, end in self.column_strips:
                if (row, column) == (BAR, BAR):
                    x, y = ((start, end), (low, high)) if self.along == "x" else ((low, high), (start, end))
                    boxes.append((x, y, (F(0), self.top)))
        return boxes


def overlap(a, b):
    return max(F(0), min(a[1], b[1]) - max(a[0], b[0]))


class Block:
    """An embed of a block's form, level and upright: ((x, x), (y, y), (z, z))."""

    def __init__(self, sides, middle_x, middle_y, foot):
        length, width, height = sides
        self.box = ((middle_x - length / 2, middle_x + length / 2), (middle_y - width / 2, middle_y + width / 2), (foot, foot + height))

    def within(self, box):
        """ml of it inside a box."""
        return float(math.prod(overlap(mine, other) for mine, other in zip(self.box, box))) / 1000


class Rod:
    """A round rod that lies along x or along y."""

    def __init__(self, diameter, length, axis, middle_x, middle_y, foot):
        self.radius = diameter / 2
        middle = (middle_x, middle_y, foot + self.radius)
        self.axis = 0 if axis == "x" else 1
        self.span = (middle[self.axis] - length / 2, middle[self.axis] + length / 2)
        self.across = middle[1 - self.axis], middle[2]

    def within(self, box):
        """ml of it inside a box: its length there, times what of its disc lies between two upright planes and below a level one;
        of these at most one may cut the disc."""
        (side, height), radius = self.across, float(self.radius)
        between, under = box[1 - self.axis], box[2]
        # How far each plane stands beyond the disc's middle, on the side of what is kept.
        planes = [float(side - between[0]), float(between[1] - side), float(height - under[0]), float(under[1] - height)]
        cutting = [d for d in planes if d < radius]
        assert len(cutting) <= 1, "a disc cut by two planes has no closed form here"
        area = disc_beyond(radius, cutting[0]) if cutting else math.pi * radius**2
        return float(overlap(self.span, box[self.axis])) * area / 1000


def disc_beyond(radius, d):
    """mm2 of a disc that is left when a plane `d` from its middle cuts off what lies beyond."""
    if d <= -radius:
        return 0.0
    half_angle = math.acos(d / radius)
    return math.pi * radius**2 - radius**2 * (half_angle - math.sin(half_angle) * math.cos(half_angle))
