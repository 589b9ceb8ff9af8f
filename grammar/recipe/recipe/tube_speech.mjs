// Speech of a tube model of the vocal tract, for any speaker. Reads a line of JSON a clip from the standard input:
// {text, out, voice: {name: value}, control: {name: value}}, names as in the program's own files of settings.
// Needs the npm package @echogarden/gnuspeech-wasm 0.3.0 (GPL; what it speaks is free), found in the folder that the
// environment variable GNUSPEECH names, or as Node finds packages.

import fs from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import readline from "node:readline";
import { pathToFileURL } from "node:url";

const PACKAGE = "@echogarden/gnuspeech-wasm";
const home = process.env.GNUSPEECH;
const require = createRequire(home ? path.resolve(home, "anywhere.js") : import.meta.url);
let program;
try {
  const main = require.resolve(PACKAGE);
  program = path.resolve(path.dirname(main), "../../wasm/gnuspeech.js");
} catch {
  console.error(`npm install ${PACKAGE}@0.3.0 and name the folder it was installed in with GNUSPEECH`);
  process.exit(2);
}

const module = await (await import(pathToFileURL(program))).default();
const SETTINGS = "/data/en";
const [SPOKEN, PARAMETERS] = ["spoken.wav", "parameters.txt"];
const read = (name) => module.FS.readFile(`${SETTINGS}/${name}.txt`, { encoding: "utf8" });
const write = (name, text) => module.FS.writeFile(`${SETTINGS}/${name}.txt`, text);
const [speaker, control] = [read("voice_male"), read("trm_control_model")];

function changed(settings, values) {
  for (const [name, value] of Object.entries(values)) {
    const line = new RegExp(`^${name} = .*$`, "m");
    if (!line.test(settings)) throw new Error(`no setting ${name}`);
    settings = settings.replace(line, `${name} = ${value.toFixed(3)}`);
  }
  return settings;
}

function inMemory(text) {
  const bytes = Buffer.from(text + "\0");
  const address = module._malloc(bytes.length);
  module.HEAPU8.set(bytes, address);
  return address;
}

for await (const line of readline.createInterface({ input: process.stdin })) {
  const clip = JSON.parse(line);
  write("voice_male", changed(speaker, clip.voice));
  write("trm_control_model", changed(control, clip.control));
  const given = [clip.text, SPOKEN, SETTINGS, PARAMETERS].map(inMemory);
  const failure = module._GnuSpeech_synthesizeToFile(...given, false);
  given.forEach((address) => module._free(address));
  if (failure) throw new Error(`not spoken: ${clip.text}`);
  fs.writeFileSync(clip.out, module.FS.readFile(SPOKEN));
}
