"""OpenFst's command line tools (Debian: libfst-tools, 1.7.9), which compile and sort the graphs."""

import glob
import os
import pathlib
import shutil
import subprocess

TOOLS = ("fstcompile", "fstconnect", "fstarcsort", "fstconvert", "fstcompose", "fstprint")


def lookahead_library():
    """The library that adds the lookahead type. Debian ships it without the name that the tools look for."""
    named = os.environ.get("FST_LOOKAHEAD")
    found = [named] if named else sorted(glob.glob("/usr/lib/*/libfstlookahead.so.*"))
    return found[0] if found else None


def missing():
    """What is not there of what the graph needs; empty when all is."""
    absent = [tool for tool in TOOLS if not shutil.which(tool)]
    return absent + ([] if lookahead_library() else ["libfstlookahead"])


def pipe(*commands, source=None, environment=None):
    """Runs commands as a pipeline, each a list of words; returns what the last prints."""
    data = pathlib.Path(source).read_bytes() if source else None
    for command in commands:
        where = {**os.environ, **environment} if environment else None
        data = subprocess.run(command, input=data, stdout=subprocess.PIPE, check=True, env=where).stdout
    return data


def write_text(path, start, arcs, finals):
    """The text form: the start state's arcs first, then the others, then the final states with their costs."""
    with open(path, "w", encoding="utf-8") as out:
        for source, target, heard, said, cost in sorted(arcs, key=lambda arc: (arc[0] != start, arc[0])):
            out.write(f"{source} {target} {heard} {said} {cost:.6g}\n")
        for state, cost in finals:
            out.write(f"{state} {cost:.6g}\n")


def lookahead(text, relabelled, target):
    """Compiles `text` for composition at run time; `relabelled` receives the pairs old and new word number."""
    sorted_graph = pathlib.Path(str(text) + ".sorted")
    sorted_graph.write_bytes(
        pipe(["fstcompile"], ["fstconnect"], ["fstarcsort", "--sort_type=olabel"], source=text)
    )
    convert = ["fstconvert", "--fst_type=olabel_lookahead", f"--save_relabel_opairs={relabelled}"]
    pipe([*convert, str(sorted_graph), str(target)], environment={"LD_PRELOAD": lookahead_library()})


def constant(text, target):
    """Compiles a word graph `text` into the read-only type."""
    commands = (["fstcompile"], ["fstconnect"], ["fstarcsort", "--sort_type=ilabel"], ["fstconvert", "--fst_type=const"])
    pathlib.Path(target).write_bytes(pipe(*commands, source=text))
