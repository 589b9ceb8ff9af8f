"""The recogniser itself, through its C interface: the same library that the assistant loads from its Java package."""

import ctypes
import json
import os
import pathlib
import tempfile
import zipfile

MEMBER = "linux-x86-64/libvosk.so"


def find():
    """The Vosk jar or shared library: VOSK_LIBRARY, or the newest jar in the local Maven repository, or None."""
    named = os.environ.get("VOSK_LIBRARY")
    if named:
        return pathlib.Path(named)
    jars = pathlib.Path.home() / ".m2/repository/com/alphacephei/vosk"
    found = sorted(jars.glob("*/vosk-*.jar"))
    return found[-1] if found else None


def load(place=None):
    place = pathlib.Path(place) if place else find()
    if place is None:
        raise FileNotFoundError("no Vosk library: set VOSK_LIBRARY to vosk-0.3.45.jar or libvosk.so")
    if place.suffix == ".jar":
        with tempfile.TemporaryDirectory() as scratch, zipfile.ZipFile(place) as jar:
            library = ctypes.CDLL(jar.extract(MEMBER, scratch))
    else:
        library = ctypes.CDLL(str(place))
    pointer, text, number = ctypes.c_void_p, ctypes.c_char_p, ctypes.c_int
    declared = {
        "vosk_model_new": (pointer, [text]),
        "vosk_model_free": (None, [pointer]),
        "vosk_recognizer_new": (pointer, [pointer, ctypes.c_float]),
        "vosk_recognizer_new_grm": (pointer, [pointer, ctypes.c_float, text]),
        "vosk_recognizer_free": (None, [pointer]),
        "vosk_recognizer_set_words": (None, [pointer, number]),
        "vosk_recognizer_set_max_alternatives": (None, [pointer, number]),
        "vosk_recognizer_accept_waveform_s": (number, [pointer, ctypes.POINTER(ctypes.c_short), number]),
        "vosk_recognizer_result": (text, [pointer]),
        "vosk_recognizer_final_result": (text, [pointer]),
        "vosk_set_log_level": (None, [number]),
    }
    for name, (result, arguments) in declared.items():
        function = getattr(library, name)
        function.restype, function.argtypes = result, arguments
    library.vosk_set_log_level(-2)
    return library


class Model:
    """A model folder, loaded once; decodes arrays of 16-bit samples at 16 kHz."""

    def __init__(self, folder, library=None):
        self.library = library or load()
        self.handle = self.library.vosk_model_new(str(folder).encode())
        if not self.handle:
            raise ValueError(f"the recogniser cannot read the model folder {folder}")

    def decode(self, sound, grammar=None, alternatives=0, chunk=1600, endpoints=True):
        """The results (dictionaries) of one recording, in order. An empty grammar is refused: it would end the process."""
        if grammar is not None and not grammar:
            raise ValueError("a grammar needs at least one phrase")
        v = self.library
        if grammar is None:
            recogniser = v.vosk_recognizer_new(self.handle, 16000.0)
        else:
            recogniser = v.vosk_recognizer_new_grm(self.handle, 16000.0, json.dumps(grammar).encode())
        try:
            if alternatives:
                v.vosk_recognizer_set_max_alternatives(recogniser, alternatives)
            else:
                v.vosk_recognizer_set_words(recogniser, 1)
            results = []
            for start in range(0, len(sound), chunk):
                part = sound[start : start + chunk].astype("<i2", copy=True)
                samples = part.ctypes.data_as(ctypes.POINTER(ctypes.c_short))
                if v.vosk_recognizer_accept_waveform_s(recogniser, samples, len(part)) and endpoints:
                    results.append(json.loads(v.vosk_recognizer_result(recogniser)))
            results.append(json.loads(v.vosk_recognizer_final_result(recogniser)))
            return results
        finally:
            v.vosk_recognizer_free(recogniser)

    def close(self):
        self.library.vosk_model_free(self.handle)
