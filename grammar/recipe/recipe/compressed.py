"""A network's weights in a quarter or half of their bytes, in two of the compressed forms that the recogniser reads.

Facts of the format: after its token, a matrix has its least value and its range (float32), rows and columns (int32).
"CM2 " has two bytes a value, by row: steps of range / 65535 above the least. "CM " has one byte a value, by column: first
four such 16-bit numbers for each column, between which its values lie in even steps, 64 from the first to the second, 128
to the third, 63 to the fourth. The format calls them quartiles; nothing asks that they are.
"""

import struct

import numpy as np

# One byte is enough where the error of a matrix is no more than this share of its size (root mean squares): a fifth
# of what rounding in steps of a twentieth of the deviation would do. Decision 0013 has what was heard with it.
LARGEST_ERROR = 0.01

FINE = 65535
STEPS = (0, 64, 192, 255)


def encode(matrix):
    """Token and bytes of a matrix: in one byte a value where that is good enough, else in two."""
    matrix = np.asarray(matrix, "<f4")
    small = by_columns(matrix)
    error = np.sqrt(np.mean((decode("CM", small, 0)[0] - matrix) ** 2))
    if error <= LARGEST_ERROR * np.sqrt(np.mean(matrix**2)):
        return "CM", small
    least, span = limits(matrix)
    return "CM2", header(least, span, matrix.shape) + fine(matrix, least, span).tobytes()


def limits(matrix):
    least, most = float(matrix.min()), float(matrix.max())
    return least, most - least or 1.0


def header(least, span, shape):
    return struct.pack("<ffii", least, span, *shape)


def fine(values, least, span):
    return np.clip(np.rint((values - least) / span * FINE), 0, FINE).astype("<u2")


def by_columns(matrix):
    """One byte a value, with the marks of each column where they leave the least error."""
    least, span = limits(matrix)
    low, high = matrix.min(axis=0), matrix.max(axis=0)
    best = np.full(matrix.shape[1], np.inf)
    marks = np.zeros((4, matrix.shape[1]), "<u2")
    codes = np.zeros(matrix.shape, np.uint8)
    quarters = [(low + (high - low) * share, high - (high - low) * share) for share in (0.25, 0.3, 0.35, 0.4)]
    quarters += [tuple(np.quantile(matrix, (share, 1 - share), axis=0)) for share in (0.02, 0.05, 0.1, 0.15, 0.25)]
    for second, third in quarters:
        tried = fine(np.stack([low, second, third, high]), least, span)
        code = nearest(matrix, stretched(tried, least, span))
        error = np.sum((values(code, stretched(tried, least, span)) - matrix) ** 2, axis=0)
        better = error < best
        best = np.where(better, error, best)
        marks[:, better], codes[:, better] = tried[:, better], code[:, better]
    return header(least, span, matrix.shape) + marks.T.tobytes() + codes.T.tobytes()


def stretched(marks, least, span):
    return np.float32(least) + np.float32(span) * marks.astype("<f4") / np.float32(FINE)


def nearest(matrix, marks):
    return np.stack(
        [np.rint(np.interp(column, ends, STEPS)) for column, ends in zip(matrix.T, increasing(marks).T)], axis=1
    ).astype(np.uint8)


def increasing(marks):
    """The marks, no two of them alike, as interpolation between them needs it."""
    return marks + np.arange(4)[:, None] * 1e-9


def values(codes, marks):
    codes = codes.astype("<f4")
    parts = [
        marks[i] + (marks[i + 1] - marks[i]) * (codes - STEPS[i]) / np.float32(STEPS[i + 1] - STEPS[i]) for i in range(3)
    ]
    return np.where(codes <= STEPS[1], parts[0], np.where(codes <= STEPS[2], parts[1], parts[2]))


def decode(token, data, place):
    """The matrix whose bytes begin at `place`, after its token, and where they end."""
    least, span, rows, columns = struct.unpack_from("<ffii", data, place)
    place += 16
    if token == "CM2":
        found = np.frombuffer(data, "<u2", rows * columns, place).reshape(rows, columns)
        return stretched(found, least, span), place + 2 * rows * columns
    marks = np.frombuffer(data, "<u2", 4 * columns, place).reshape(columns, 4).T
    codes = np.frombuffer(data, np.uint8, rows * columns, place + 8 * columns).reshape(columns, rows).T
    return values(codes, stretched(marks, least, span)), place + 8 * columns + rows * columns
