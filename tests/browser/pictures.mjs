// Takes the two pictures of the README from the real page: the page, and the card as it is printed.
// `make pictures` runs it.

import { execFile } from "node:child_process";
import { mkdir, rename, stat } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { print } from "./print.mjs";
import { onItsOwn } from "./rig.mjs";
import { Screen } from "./screen.mjs";

const run = promisify(execFile);
const FOLDER = fileURLToPath(new URL("./pictures/", import.meta.url));
// The README loads with its pictures.
const MOST_BYTES = 200_000;

await mkdir(FOLDER, { recursive: true });
await onItsOwn(async (t) => {
  const screen = await Screen.open(t, { viewport: { width: 1280, height: 1000 }, context: { locale: "en-GB" } });
  await screen.openExample("floating_boards");
  await screen.showDay(30);
  await screen.page.evaluate(() => {
    document.activeElement.blur();
    scrollTo(0, 0);
  });
  await screen.page.screenshot({ path: join(FOLDER, "page.png") });

  const { file } = await print(screen.page, { format: "A4" });
  await run("pdftoppm", ["-png", "-gray", "-r", "80", "-singlefile", file, `${file}-card`]);
  await rename(`${file}-card.png`, join(FOLDER, "card.png"));
});
for (const name of ["page.png", "card.png"]) {
  const { size } = await stat(join(FOLDER, name));
  console.log(`tests/browser/pictures/${name}: ${Math.round(size / 1000)} kB`);
  if (size > MOST_BYTES) {
    console.error(`${name} is larger than ${MOST_BYTES / 1000} kB.`);
    process.exitCode = 1;
  }
}
