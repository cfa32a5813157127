// Prints what a first visit costs: each file of the built site, as it is and with brotli, which is
// how any static host sends it. Usage: node .tools/sizes.mjs [folder]

import { readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";

const folder = process.argv[2] ?? "dist";
const kinds = new Set([".html", ".css", ".js", ".wasm"]);
const brotli = (bytes) =>
  brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length } }).length;

const rows = readdirSync(folder, { recursive: true })
  .filter((name) => kinds.has(extname(name)))
  .sort()
  .map((name) => {
    const bytes = readFileSync(join(folder, name));
    return { name, raw: bytes.length, packed: brotli(bytes) };
  });
const sum = (key) => rows.reduce((total, row) => total + row[key], 0);
rows.push({ name: "together", raw: sum("raw"), packed: sum("packed") });

const kb = (bytes) => `${(bytes / 1000).toFixed(1)} kB`.padStart(11);
for (const { name, raw, packed } of rows) {
  console.log(`${name.padEnd(44)}${kb(raw)}${kb(packed)} brotli`);
}
