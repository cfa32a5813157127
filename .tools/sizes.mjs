// Prints what a first visit costs, each kind of file with its change against .tools/sizes.json, and
// fails when all together are over the budget there. Sizes are with brotli, which is how any static
// host sends files. Usage: node .tools/sizes.mjs [folder] [--keep]
//   --keep  writes the sizes found as the new ones to compare with; the budget stays

import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { extname, join } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";

const keep = process.argv.includes("--keep");
const folder = process.argv.slice(2).find((word) => !word.startsWith("--")) ?? "dist";
const kept = new URL("sizes.json", import.meta.url);
const { budget, sizes: before } = JSON.parse(readFileSync(kept, "utf8"));
const kinds = [".html", ".css", ".js", ".wasm"];
const brotli = (bytes) =>
  brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length } }).length;

const raw = {};
const sizes = {};
for (const kind of kinds) {
  const files = readdirSync(folder, { recursive: true })
    .filter((name) => extname(name) === kind)
    .map((name) => readFileSync(join(folder, name)));
  const sum = (size) => files.reduce((total, bytes) => total + size(bytes), 0);
  raw[kind] = sum((bytes) => bytes.length);
  sizes[kind] = sum(brotli);
}
const all = (table) => Object.values(table).reduce((total, size) => total + size, 0);

const kb = (bytes, sign = "") => `${sign}${(bytes / 1000).toFixed(1)} kB`.padStart(11);
const line = (name, plain, packed, old) => {
  const change = packed - old;
  const changed = Math.abs(change) < 50 ? "unchanged".padStart(11) : kb(change, change > 0 ? "+" : "");
  console.log(`${name.padEnd(10)}${kb(plain)}${kb(packed)} brotli${changed}`);
};
for (const kind of kinds) line(kind.slice(1), raw[kind], sizes[kind], before[kind] ?? 0);
line("together", all(raw), all(sizes), all(before));
const left = budget - all(sizes);
console.log(`${"budget".padEnd(21)}${kb(budget)} brotli${kb(Math.abs(left))} ${left < 0 ? "over" : "left"}`);

if (keep) writeFileSync(kept, `${JSON.stringify({ budget, sizes }, null, 2)}\n`);
// Built without the small standard library (.tools/build.sh), a page weighs about 20 kB more.
const large = existsSync(new URL("../tests/browser/out/large", import.meta.url));
if (left < 0 && !large) {
  console.error("slackwater: the page is over its budget; DEVELOPERS.md says what costs bytes and how to save them.");
  process.exitCode = 1;
}
