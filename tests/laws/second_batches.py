"""How a run is made in batches, a second time: counting and dealing in whole casts. Nothing here weighs anything.

A batch is what is mixed, poured, whipped and piped in one go; a filling is all cavities owned, filled once.
"""


def ceil_of(a, b):
    return -(-a // b)


def largest(measure, room, about):
    """The largest whole number of which `measure` is no more than `room`, 0 if none is. It is sought where a straight line through
    1 and `about` reaches `room`. Rounding on the scales may let a number fit though the next smaller one does not, so two beyond
    are tried too."""
    def fits(n):
        return n == 0 or measure(n) <= room * (1 + 1e-9)  # not above it, as far as binary fractions tell

    first, other = measure(1), measure(about + 1)
    n = max(1, min(10**6, int(1 + about * (room - first) / (other - first)))) if other > first else about
    step, fitted = 1, fits(n)
    while n > 0 and fits(n) == fitted:  # in growing steps to the other side
        n, last, step = (n + step if fitted else max(0, n - step)), n, 2 * step
    n, beyond = (last, n) if fitted else (n, last)
    while beyond - n > 1:
        middle = (n + beyond) // 2
        n, beyond = (middle, beyond) if fits(middle) else (n, middle)
    beyond = n
    while beyond < n + 2:
        beyond += 1
        if fits(beyond):
            n = beyond
    return n


def fillings_of(casts, cavities, most):
    """The batches of each filling, in casts, in the order of making.

    The fewest fillings; then the fewest batches, spread over the fillings as evenly as can be; then the most even: casts are
    dealt one by one to the smallest batch that has room and whose filling has room, of like ones to the first. Within a filling
    larger batches come first.
    """
    if most < 1:
        return None
    fillings = ceil_of(casts, cavities)
    batches = fillings
    while True:
        groups = [batches // fillings + (i < batches % fillings) for i in range(fillings)]
        if sum(min(cavities, most * group) for group in groups) >= casts:
            break
        batches += 1
    dealt = [[0] * group for group in groups]
    for _ in range(casts):
        _, i, j = min((size, i, j) for i, filling in enumerate(dealt) if sum(filling) < cavities
                      for j, size in enumerate(filling) if size < most)
        dealt[i][j] += 1
    return [sorted(filling, reverse=True) for filling in dealt]


def split(casts, whippings):
    """A batch's casts over its whippings, as evenly as can be, larger ones first."""
    return [casts // whippings + (i < casts % whippings) for i in range(whippings)]


def numbered(fillings):
    """The distinct sizes, largest first, each with the numbers of its batches in the order of making."""
    sizes = [size for filling in fillings for size in filling]
    return [(size, [i + 1 for i, other in enumerate(sizes) if other == size]) for size in sorted(set(sizes), reverse=True)]
