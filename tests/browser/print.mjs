// Prints a page as a person would and reads the result back. Uses pdfinfo and pdftotext (Debian's
// poppler-utils).

import { execFile } from "node:child_process";
import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { OUT } from "./rig.mjs";

const run = promisify(execFile);

/** A text as it can be found again on paper: spaces and line ends are the paper's own, and a hyphen at
 *  the end of a line is not read back. */
export const dense = (text) => text.replaceAll(/[\s-]/g, "");

/** Prints the page. `format` is "A4" or "Letter"; a size that the page's own style sheet asks for
 *  wins. The file stays in `out/` to be looked at.
 *
 *  Returns `file`; `pages`: the text of each page, layout kept; `text`: all of it, column by column
 *  as it is read; and `size`: the first page's width and height in points (1/72 inch). */
export async function print(page, { format = "A4" } = {}) {
  await mkdir(OUT, { recursive: true });
  const file = join(await mkdtemp(join(OUT, "print-")), `${format}.pdf`);
  await writeFile(file, await page.pdf({ format, preferCSSPageSize: true, printBackground: true }));
  const [info, laidOut, text] = await Promise.all([
    run("pdfinfo", [file]),
    run("pdftotext", ["-layout", "-enc", "UTF-8", file, "-"]),
    run("pdftotext", ["-enc", "UTF-8", file, "-"]),
  ]);
  const [, width, height] = /^Page size:\s+([\d.]+) x ([\d.]+) pts/m.exec(info.stdout);
  const count = Number(/^Pages:\s+(\d+)/m.exec(info.stdout)[1]);
  // Each page ends with a form feed, an empty one too.
  const pages = laidOut.stdout.split("\f").slice(0, count);
  return { file, pages, text: text.stdout, size: { width: Number(width), height: Number(height) } };
}
