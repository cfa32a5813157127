// Finishes the built site: places the parts of the program, joins the style sheets, gives boot.js a name of its
// contents, adds the hashes that Trunk leaves out, and writes the service worker with its list of files.
// Usage: node .tools/release.mjs [folder]

import { createHash } from "node:crypto";
import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, join, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { placeParts, replace } from "./parts.mjs";

const WORKER = fileURLToPath(new URL("../src/app/browser/worker.js", import.meta.url));
const digest = (kind, bytes, form) => createHash(kind).update(bytes).digest(form);
const named = (key, bytes, ending) => `${key}-${digest("sha256", bytes, "hex").slice(0, 16)}.${ending}`;
const integrity = (bytes) => `sha384-${digest("sha384", bytes, "base64")}`;

const TEXTS = fileURLToPath(new URL("../target/texts", import.meta.url));
const escaped = (text) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

/** Places the texts that the build wrote for each language, and names them in the page. */
function placeTexts(folder, page) {
  const languages = {};
  for (const name of readdirSync(TEXTS).filter((name) => name.endsWith(".txt")).sort()) {
    const key = basename(name, ".txt");
    const bytes = readFileSync(join(TEXTS, name));
    const file = named(key, bytes, "txt");
    writeFileSync(join(folder, file), bytes);
    const boot = JSON.parse(readFileSync(join(TEXTS, `${key}.json`), "utf8"));
    languages[key] = { file, integrity: integrity(bytes), boot };
  }
  let text = page;
  for (const [say, words] of Object.entries(languages.en.boot)) {
    text = text.replace(`data-say="${say}"></p>`, () => `data-say="${say}">${escaped(words)}</p>`);
  }
  const silent = Object.entries(languages).map(([key, { boot }]) => `<p lang="${key}">${escaped(boot["no-script"])}</p>`);
  text = replace(text, "<noscript></noscript>", `<noscript>${silent.join("")}</noscript>`);
  return replace(text, ' data-wasm="', ` data-texts="${escaped(JSON.stringify(languages))}" data-wasm="`);
}

/** Makes one of the style sheets, in their order: it takes one request, and packs a quarter smaller. */
function joinStyles(folder, page) {
  const links = [...page.matchAll(/<link rel="stylesheet" href="\.\/([^"]+)"[^>]*>\s*/g)];
  const bytes = Buffer.concat(links.map(([, name]) => readFileSync(join(folder, name))));
  for (const [, name] of links) rmSync(join(folder, name));
  const file = named("style", bytes, "css");
  writeFileSync(join(folder, file), bytes);
  const joined = `<link rel="stylesheet" href="./${file}" integrity="${integrity(bytes)}">`;
  return links.reduce((text, [link], index) => replace(text, link, index ? "" : joined), page);
}

/** An old boot.js in a browser's cache must never meet a new page: its name changes with it. */
export function sealPage(folder) {
  const page = join(folder, "index.html");
  const hashOf = (name) => integrity(readFileSync(join(folder, name)));
  let text = readFileSync(page, "utf8");
  const [, built, wasm] = /data-js="([^"]+)" data-wasm="([^"]+)"/.exec(text);
  const { script: js, loader } = placeParts(folder, built);
  text = replace(text, `data-js="${built}"`, `data-js="${js}"`);
  text = replace(text, `href="./${built}"`, `href="./${js}"`);
  const boot = named("boot", readFileSync(join(folder, "boot.js")), "js");
  renameSync(join(folder, "boot.js"), join(folder, boot));
  text = replace(text, 'src="./boot.js"', `src="./${boot}" integrity="${hashOf(boot)}"`);
  text = replace(text, `data-wasm="${wasm}"`, `data-wasm="${wasm}" data-wasm-integrity="${hashOf(wasm)}"`);
  text = joinStyles(folder, placeTexts(folder, text));
  const preload = (name) => `<link rel="modulepreload" href="./${name}" integrity="${hashOf(name)}">`;
  text = replace(text, `<link rel="modulepreload" href="./${js}">`, preload(js) + preload(loader));
  writeFileSync(page, text);
}

/** Writes worker.js for the files that lie in the folder. */
export function writeWorker(folder) {
  const files = {};
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath ?? entry.path, entry.name);
    const name = path.slice(join(folder, sep).length).replaceAll(sep, "/");
    if (!entry.isFile() || name === "worker.js") continue;
    // Many hosts redirect index.html to its folder, and a redirected answer may not open a page.
    files[name === "index.html" ? "./" : name] = integrity(readFileSync(path));
  }
  const sorted = Object.fromEntries(Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1)));
  const source = readFileSync(WORKER, "utf8");
  const generation = digest("sha256", JSON.stringify(sorted) + source, "hex").slice(0, 16);
  const release = JSON.stringify({ generation, files: sorted });
  writeFileSync(join(folder, "worker.js"), `const RELEASE = ${release};\n${source}`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = process.argv[2] ?? "dist";
  sealPage(folder);
  writeWorker(folder);
}
