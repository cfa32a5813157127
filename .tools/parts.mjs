// Puts the parts that .tools/bin/wasm-bindgen cut off into the built site: small, with names that
// change with their contents, and held to their hashes like all other files.

import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const hash = (bytes) => createHash("sha256").update(bytes).digest("hex").slice(0, 16);
const integrity = (bytes) => `sha384-${createHash("sha384").update(bytes).digest("base64")}`;

/** What index.html asks of wasm-opt for the program holds for its parts. */
function options() {
  const page = readFileSync(root("index.html"), "utf8");
  const asked = (name) => new RegExp(`${name}="([^"]+)"`).exec(page)[1];
  return [`-O${asked("data-wasm-opt")}`, ...asked("data-wasm-opt-params").split(" ")];
}

/** A part as small as wasm-opt makes it. */
function smaller(path) {
  const folder = mkdtempSync(join(tmpdir(), "part-"));
  try {
    const out = join(folder, "part.wasm");
    execFileSync("wasm-opt", [...options(), path, "-o", out], { stdio: ["ignore", "inherit", "ignore"] });
    return readFileSync(out);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Replaces what must be there exactly once. */
export function replace(text, old, now) {
  if (text.split(old).length !== 2) throw new Error(`'${old}' should stand there once`);
  return text.replace(old, () => now);
}

/**
 * Writes the parts and their loader into the folder, and lets the program's script, whose name is
 * given, find the loader. Answers with the script's new name and the loader's.
 */
export function placeParts(folder, script) {
  const from = root("target/parts");
  let text = readFileSync(join(folder, script), "utf8");
  // Before the long work: a site is finished once.
  if (!text.includes(`from "./__wasm_split.js"`)) throw new Error(`${script} has its parts already`);
  let loader = readFileSync(join(from, "__wasm_split.js"), "utf8");
  for (const name of readdirSync(from).filter((name) => name.endsWith(".wasm"))) {
    const bytes = smaller(join(from, name));
    const placed = `${name.replace(/^split_|\.wasm$/g, "").replace(/^chunk.*/, "shared")}-${hash(bytes)}.wasm`;
    writeFileSync(join(folder, placed), bytes);
    loader = replace(
      loader,
      `fetch(new URL("./${name}", import.meta.url))`,
      `fetch(new URL("./${placed}", import.meta.url), { integrity: "${integrity(bytes)}" })`,
    );
  }
  // The two scripts name each other, so neither name can be of its own contents alone.
  const release = hash(text + loader);
  const names = { script: script.replace(/-[^-]+\.js$/, `-${release}.js`), loader: `parts-${release}.js` };
  loader = replace(loader, `"./program.js"`, `"./${names.script}"`);
  // Once for each part.
  text = text.replaceAll(`from "./__wasm_split.js"`, `from "./${names.loader}"`);
  rmSync(join(folder, script));
  writeFileSync(join(folder, names.script), text);
  writeFileSync(join(folder, names.loader), loader);
  return names;
}
