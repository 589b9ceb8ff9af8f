"""Weights in fewer bytes: how far they may be off, and that what is written is read."""

import pathlib
import sys
import unittest

import numpy as np

sys.path.insert(0, str(pathlib.Path(__file__).parents[1]))

from recipe import compressed  # noqa: E402

DRAWN = np.random.default_rng(5)


def there_and_back(matrix):
    token, data = compressed.encode(matrix)
    found, end = compressed.decode(token, b"before" + data + b"after", 6)
    return token, found, end - 6 == len(data)


class Compressed(unittest.TestCase):
    def test_weights_as_training_leaves_them_take_a_byte_each_and_are_off_by_a_hundredth_at_most(self):
        matrix = DRAWN.normal(size=(512, 128)) * np.exp(DRAWN.normal(size=128))
        token, found, whole = there_and_back(matrix)
        self.assertEqual("CM", token)
        self.assertTrue(whole)
        self.assertLess(np.linalg.norm(found - matrix), 0.01 * np.linalg.norm(matrix))

    def test_rows_of_very_different_size_take_two_bytes_a_weight(self):
        matrix = DRAWN.normal(size=(512, 128)) * np.exp(3 * DRAWN.normal(size=(512, 1)))
        token, found, whole = there_and_back(matrix)
        self.assertEqual("CM2", token)
        self.assertTrue(whole)
        self.assertLess(np.abs(found - matrix).max(), (matrix.max() - matrix.min()) / 65535)

    def test_columns_without_any_difference_are_taken(self):
        for matrix in (np.zeros((4, 3)), np.ones((4, 3)), np.arange(3.0)[None, :].repeat(4, 0)):
            _, found, whole = there_and_back(matrix)
            self.assertTrue(whole)
            np.testing.assert_allclose(found, matrix, atol=1e-4)

    def test_the_header_is_as_the_recogniser_reads_it(self):
        token, data = compressed.encode(np.array([[-1.0, 3.0], [0.0, 1.0]]))
        self.assertEqual((-1.0, 4.0), tuple(np.frombuffer(data, "<f4", 2)))
        self.assertEqual((2, 2), tuple(np.frombuffer(data, "<i4", 2, 8)))
        self.assertEqual(16 + (2 * 8 + 4 if token == "CM" else 8), len(data))


if __name__ == "__main__":
    unittest.main()
