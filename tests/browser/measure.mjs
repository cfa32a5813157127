// Reads lines back from a printed page in millimetres of the paper. Uses pdftocairo (Debian's
// poppler-utils), which keeps a line a line.

import { execFile } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);
/** A point is 1/72 inch. */
const MM = 25.4 / 72;

/** The stroked paths of a page: `width`, the width of the line as it was drawn, and `parts`, each a
 *  list of points [x, y] in mm from the upper left corner of the paper. Points of curves are among
 *  them. */
export async function strokes(file, page) {
  const { stdout } = await run("pdftocairo", ["-svg", "-f", String(page), "-l", String(page), file, "-"], {
    maxBuffer: 1 << 26,
  });
  const found = [];
  for (const [path] of stdout.matchAll(/<path [^>]*stroke-width[^>]*>/g)) {
    const [, width] = /stroke-width:([\d.]+)/.exec(path);
    const [, drawn] = / d="([^"]*)"/.exec(path);
    const matrix = /matrix\(([^)]*)\)/.exec(path)?.[1].split(",").map(Number) ?? [1, 0, 0, 1, 0, 0];
    const [a, b, c, d, e, f] = matrix;
    const parts = drawn
      .split("M")
      .map((part) => part.match(/-?[\d.]+(e-?\d+)?/g)?.map(Number) ?? [])
      // A closed path ends with a move back to its beginning.
      .filter((numbers) => numbers.length > 2)
      .map((numbers) =>
        Array.from({ length: numbers.length / 2 }, (_, i) => [numbers[2 * i], numbers[2 * i + 1]]).map(([x, y]) => [
          (a * x + c * y + e) * MM,
          (b * x + d * y + f) * MM,
        ]),
      );
    found.push({ width: Number(width), parts });
  }
  return found;
}

/** Left, top, width and height of points. */
export function bounds(points) {
  const [xs, ys] = [0, 1].map((axis) => points.map((point) => point[axis]));
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}
