// Prints what a first visit costs, each kind of file with its change against .tools/sizes.json, and
// what each part of the program costs that is fetched later; fails when a first visit, or the main job
// from a first visit to the card, is over its budget there. Sizes are with brotli, which is how any
// static host sends files. Usage: node .tools/sizes.mjs [folder] [--keep]
//   --keep  writes the sizes found as the new ones to compare with; the budgets stay

import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { extname, join } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";

const keep = process.argv.includes("--keep");
const folder = process.argv.slice(2).find((word) => !word.startsWith("--")) ?? "dist";
const kept = new URL("sizes.json", import.meta.url);
const { budget, sizes: before } = JSON.parse(readFileSync(kept, "utf8"));

const packed = (name) => {
  const bytes = readFileSync(join(folder, name));
  return brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length } }).length;
};
const names = readdirSync(folder).filter((name) => [".html", ".css", ".js", ".wasm", ".txt"].includes(extname(name)));
const size = Object.fromEntries(names.map((name) => [name, packed(name)]));
const sum = (some) => some.reduce((total, name) => total + size[name], 0);

// What the loader fetches for each part: its own file, and those that it shares with others.
const loader = readFileSync(join(folder, names.find((name) => /^parts-.*\.js$/.test(name))), "utf8");
const shared = Object.fromEntries(
  [...loader.matchAll(/const (__chunk_\d+) = makeLoad[^]*?"\.\/([^"]+\.wasm)"/g)].map(([, chunk, file]) => [chunk, file]),
);
const parts = Object.fromEntries(
  [...loader.matchAll(/__wasm_split_load_(\w+) = [^]*?"\.\/([^"]+\.wasm)"[^]*?\[([^\]]*)\]\)\)/g)].map(
    ([, part, own, chunks]) => [part, [own, ...chunks.split(", ").filter(Boolean).map((chunk) => shared[chunk])]],
  ),
);
const later = new Set(Object.values(parts).flat());
// One language is fetched: the one whose texts weigh most counts.
const texts = names.filter((name) => name.endsWith(".txt")).sort((a, b) => size[b] - size[a]);
for (const other of texts.slice(1)) later.add(other);
const first = names.filter((name) => !later.has(name));

const sizes = {};
for (const kind of ["html", "css", "js", "wasm", "txt"]) sizes[kind] = sum(first.filter((name) => name.endsWith(`.${kind}`)));
sizes["first visit"] = sum(first);
for (const [part, files] of Object.entries(parts)) sizes[`part ${part}`] = sum(files);
sizes["main job"] = sum([...first, ...parts.plan]);
sizes.everything = sum(names);

const kb = (bytes, sign = "") => `${sign}${(bytes / 1000).toFixed(1)} kB`.padStart(11);
for (const [name, bytes] of Object.entries(sizes)) {
  const change = bytes - (before[name] ?? 0);
  const changed = Math.abs(change) < 50 ? "unchanged".padStart(11) : kb(change, change > 0 ? "+" : "");
  const limit = budget[name] ? `   budget ${kb(budget[name]).trim()}, ${kb(budget[name] - bytes).trim()} left` : "";
  console.log(`${name.padEnd(14)}${kb(bytes)} brotli${changed}${limit}`);
}
if (keep) writeFileSync(kept, `${JSON.stringify({ budget, sizes }, null, 2)}\n`);

// Built without the small standard library (.tools/build.sh), a page weighs about 20 kB more.
const large = existsSync(new URL("../tests/browser/out/large", import.meta.url));
const over = Object.keys(budget).filter((name) => sizes[name] > budget[name]);
if (over.length && !large) {
  console.error(`slackwater: over its budget: ${over.join(", ")}; DEVELOPERS.md says what costs bytes and how to save them.`);
  process.exitCode = 1;
}
