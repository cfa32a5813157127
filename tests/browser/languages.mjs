// Languages of the page: a made-up one that marks every text, and what a reader could stumble over.

import { createHash } from "node:crypto";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DIST, startServer } from "./rig.mjs";

const unescaped = (text) => text.replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&amp;", "&");
const escaped = (text) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

/** The texts of the built page: language to file, hash and first words. */
export function languagesOf(folder = DIST) {
  return JSON.parse(unescaped(/data-texts="([^"]*)"/.exec(readFileSync(join(folder, "index.html"), "utf8"))[1]));
}

/** The same buttons under their Spanish names. */
export function inSpanish(screen) {
  const languages = languagesOf();
  const [en, es] = ["en", "es"].map((key) => readFileSync(join(DIST, languages[key].file), "utf8").split("\n"));
  screen.button = (name) => {
    if (!en.includes(name)) throw new Error(`no text is '${name}'`);
    return screen.page.getByRole("button", { name: es[en.indexOf(name)], exact: true });
  };
  return screen;
}

/**
 * Serves the page with every English text between ⟦ and ⟧. What is put into a text stands outside of
 * them, so that a word which is put in without being a text of the language shows.
 */
export async function markedSite(t) {
  const folder = mkdtempSync(join(tmpdir(), "marked-"));
  t.after(() => rmSync(folder, { recursive: true }));
  cpSync(DIST, folder, { recursive: true });
  // It would hold the texts to their hashes.
  rmSync(join(folder, "worker.js"));
  const languages = languagesOf(folder);
  const texts = readFileSync(join(folder, languages.en.file), "utf8");
  // U+0001 and a number: what is put in.
  const marked = texts.split("\n").map((line) => (line === "" ? line : `⟦${line.replaceAll(/\u0001(.)/g, "⟧\u0001$1⟦")}⟧`));
  const bytes = marked.join("\n");
  writeFileSync(join(folder, languages.en.file), bytes);
  const before = readFileSync(join(folder, "index.html"), "utf8");
  const after = escaped(
    JSON.stringify({
      ...languages,
      en: { ...languages.en, integrity: `sha384-${createHash("sha384").update(bytes).digest("base64")}` },
    }),
  );
  writeFileSync(join(folder, "index.html"), before.replace(/data-texts="[^"]*"/, () => `data-texts="${after}"`));
  return startServer(t, { folder });
}

/** Letters that may stand outside of a marked text: units, symbols, formulae, grades, names of files. */
const NO_LANGUAGE = [
  /\b(µmol\/m²\/s|MJ\/m²|kWh\/m²|mol\/m²|mmol\/kg|kg\/m²|kg\/m³|lb\/ft²|mg\/L|g\/L|oz\/gal|lb\/gal|L\/kg|gal\/lb|µS\/cm|mS\/cm|fl oz|ppm)/g,
  /(?<=[\d\s(/]|^)(cm|mm|km|m²|m³|m|mL|L|kg|mg|g|h|in|ft²|ft|gal|lb|oz|qt|pH|kPa|N|kN|MPa|GPa|psi|lbf|m)(?=[\s.,;:)/×·–]|$)/g,
  /°[CF]/g,
  /\b(PVC|ABS|HDPE|PE|XPS|EPS|UV|LED)\b/g,
  // Formulae of ions and salts.
  /\b(([A-Z][a-z]?\d*)|\(([A-Z][a-z]?\d*)+\)\d*|·\d*)+([+-]|\d[+-])?/g,
];

/** Texts of the document, read or only heard, with letters that belong to no marked text. */
export async function unmarked(page, own = []) {
  const texts = await page.evaluate(() => {
    const found = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.nodeType === Node.TEXT_NODE ? node.parentElement : node;
      if (element.closest("script, style, noscript, #language")) continue;
      const where = `${element.closest("[id]")?.id ?? ""} ${element.localName}.${element.getAttribute("class") ?? ""}`;
      if (node.nodeType === Node.TEXT_NODE) found.push([node.data, where]);
      else {
        for (const name of ["aria-label", "title", "placeholder", "alt", "aria-description", "aria-valuetext"]) {
          if (element.hasAttribute(name)) found.push([element.getAttribute(name), `${where} ${name}`]);
        }
      }
    }
    return found;
  });
  const rest = (text) => {
    let left = text;
    for (let before; before !== left; ) {
      before = left;
      left = left.replaceAll(/⟦[^⟦⟧]*⟧/g, " ");
    }
    for (const word of own) left = left.replaceAll(word, " ");
    for (const pattern of NO_LANGUAGE) left = left.replaceAll(pattern, " ");
    return left;
  };
  const bad = texts.filter(([text]) => /\p{L}{2}/u.test(rest(text)));
  return [...new Set(bad.map(([text, where]) => `${where}: ${text}`))];
}

/** What does not fit: text beyond its box or the window, outside of what scrolls by itself. */
export function clipped(page) {
  return page.evaluate(() => {
    const shown = (element) => element.getClientRects().length > 0 && getComputedStyle(element).visibility === "visible";
    const told = (element) => `${element.localName}.${element.getAttribute("class") ?? ""} '${element.textContent.trim().slice(0, 60)}'`;
    const found = [];
    for (const element of document.body.querySelectorAll("*")) {
      if (!shown(element) || element.closest("script, style, .scroll, .unseen, .label-unit, [hidden]")) continue;
      const box = element.getBoundingClientRect();
      if (element.closest("svg")) {
        const frame = element.closest("svg").getBoundingClientRect();
        if (element.localName === "text" && (box.left < frame.left - 1 || box.right > frame.right + 1)) found.push(`beyond its picture: ${told(element)}`);
        continue;
      }
      if (box.right > innerWidth + 1 || box.left < -1) found.push(`beyond the window: ${told(element)}`);
      const style = getComputedStyle(element);
      const inner = !["inline", "contents"].includes(style.display) && !["select", "input", "textarea"].includes(element.localName);
      if (inner && style.overflowX !== "visible" && style.overflowX !== "auto" && element.scrollWidth > element.clientWidth + 1) {
        found.push(`cut off: ${told(element)}`);
      }
    }
    return found;
  });
}
