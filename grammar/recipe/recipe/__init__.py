"""The recipe of the acoustic model: from recordings to the files that the recogniser reads."""
