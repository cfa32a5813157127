// Draws the icons of the installed page from style/icon.svg; `make pictures` runs it.

import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { launch, onItsOwn } from "./rig.mjs";

const STYLE = fileURLToPath(new URL("../../style/", import.meta.url));
const drawing = await readFile(`${STYLE}icon.svg`, "utf8");

// Systems cut a maskable icon down to the middle four fifths, at most: the drawing's corners, 0.71 of
// its width from the middle to a corner, must lie within.
const ICONS = [
  { name: "icon-192.png", size: 192, share: 1, ground: "transparent" },
  { name: "icon-512.png", size: 512, share: 1, ground: "transparent" },
  { name: "icon-maskable-512.png", size: 512, share: 0.56, ground: "#fbfaf5" },
];

await onItsOwn(async (t) => {
  const page = await launch(t);
  for (const { name, size, share, ground } of ICONS) {
    await page.setViewportSize({ width: size, height: size });
    const inner = Math.round(size * share);
    await page.setContent(`<style>
      html { background: ${ground} }
      body { margin: 0; height: 100vh; display: grid; place-items: center }
      svg { width: ${inner}px; height: ${inner}px }
    </style>${drawing}`);
    await page.screenshot({ path: STYLE + name, omitBackground: true });
    console.log(`style/${name}`);
  }
});
