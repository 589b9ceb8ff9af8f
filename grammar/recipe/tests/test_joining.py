import unittest

import numpy as np

from recipe import joining, packing


def recording(loud, soft, seconds=1.0):
    """A tone in the middle of soft noise."""
    rng = np.random.default_rng(7)
    samples = int(seconds * packing.RATE)
    sound = rng.normal(0, soft, samples)
    middle = slice(samples // 3, samples * 2 // 3)
    sound[middle] += loud * np.sin(np.arange(samples)[middle] * 0.3)
    return sound.astype(np.int16)


class JoiningTest(unittest.TestCase):
    def clips(self, words, speakers=1):
        sounds = [recording(3000, 20) for _ in words]
        audio = np.concatenate(sounds)
        clips = [
            packing.Spoken(i * packing.RATE, packing.RATE, f"p{i % speakers}", "Speech Commands", (word,))
            for i, word in enumerate(words)
        ]
        return audio, clips

    def test_a_pause_holds_the_floor_of_the_recording(self):
        sound = recording(3000, 20)
        whole = joining.joined([sound, sound], [8000], [1.0, 1.0])
        first, last = joining.spoken_part(sound)
        pause = whole[last - first : last - first + 8000].astype(float)
        self.assertEqual(len(whole), 2 * (last - first) + 8000)
        self.assertTrue(10 < pause.std() < 40, pause.std())

    def test_words_are_made_alike_in_loudness(self):
        rng = np.random.default_rng(1)
        loud, soft = recording(9000, 20), recording(900, 20)
        levels = [np.std(joining.louder(s, joining.gain(s, rng))[6000:10000]) for s in (loud, soft)]
        self.assertLess(abs(20 * np.log10(levels[0] / levels[1])), 6 * joining.UNEVEN)

    def test_utterances_are_of_known_words_and_lie_behind_the_audio(self):
        audio, clips = self.clips("one two three four yes stop".split())
        longer, made = joining.join_words(audio, clips, 40, np.random.default_rng(3))
        self.assertEqual(len(made), 40)
        self.assertEqual(made[-1].start + made[-1].samples, len(longer))
        self.assertTrue(all(2 <= len(each.words) <= 6 for each in made))
        self.assertTrue(any("yes" in each.words for each in made))
        only_digits = sum(set(each.words) <= joining.DIGITS for each in made)
        self.assertGreater(only_digits, len(made) / 2)

    def test_readings_are_of_one_person_who_said_all_their_words(self):
        audio, clips = self.clips("one hundred and two three four five six point eighteen fifty".split(), speakers=1)
        readings = joining.called_out(clips, np.random.default_rng(5))
        texts = [[clip.words[0] for clip in next(readings)] for _ in range(60)]
        self.assertTrue(any("hundred" in text or "point" in text for text in texts), texts)
        self.assertTrue(all(len(text) >= 2 for text in texts))

    def test_readings_are_of_several_people_where_nobody_said_all_words(self):
        audio, clips = self.clips(["one", "two", "three", "four"], speakers=4)
        people = {clip.speaker for clip in next(joining.called_out(clips, np.random.default_rng(5)))}
        self.assertGreater(len(people), 1)

    def test_no_reading_is_made_of_words_that_are_in_none(self):
        audio, clips = self.clips(["yes", "stop"], speakers=1)
        self.assertEqual(list(joining.called_out(clips, np.random.default_rng(5))), [])

    def test_nothing_is_joined_where_everybody_said_one_word(self):
        audio, clips = self.clips(["one", "two"], speakers=2)
        longer, made = joining.join_words(audio, clips, 5, np.random.default_rng(3))
        self.assertEqual((len(longer), made), (len(audio), []))


if __name__ == "__main__":
    unittest.main()
