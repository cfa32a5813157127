// Writes pictures of every state of the page to out/screens/, to be looked at:
//   node tests/browser/screenshots.mjs [word in the name…]

import { mkdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { DESKTOP, onItsOwn, OUT, PHONE, TABLET } from "./rig.mjs";
import { EXAMPLES, Screen, STEPS } from "./screen.mjs";

const FOLDER = join(OUT, "screens");
const WIDE = { width: 1080, height: 810 };
const wanted = process.argv.slice(2);

await rm(FOLDER, { recursive: true, force: true });
await mkdir(FOLDER, { recursive: true });
let count = 0;

await onItsOwn(async (t) => {
  for (const viewport of [PHONE, TABLET, WIDE, DESKTOP]) {
    for (const colorScheme of ["light", "dark"]) {
      const screen = await Screen.open(t, { viewport, colorScheme, context: { locale: "en-GB" } });
      const take = async (state) => {
        const name = `${viewport.width}-${colorScheme}-${state}`;
        if (!wanted.every((word) => name.includes(word))) return;
        await screen.page.screenshot({ path: join(FOLDER, `${name}.png`), fullPage: true });
        count += 1;
      };
      await take("welcome");
      for (const key of EXAMPLES) {
        await screen.openExample(key);
        for (const step of STEPS) {
          // One example shows every step, the others their first.
          if (key !== "floating_boards" && step !== "container") continue;
          await screen.goTo(step);
          await take(`${key}-${step}`);
        }
        await screen.goTo("container");
        await screen.openMenu();
        if (key === "floating_boards") {
          await take("menu");
          await screen.chooseUnits("us");
          await screen.page.evaluate(() => {
            for (const fold of document.querySelectorAll("details")) fold.open = fold.className === "fold";
          });
          await take("us-unfolded");
          await screen.chooseUnits("metric");
          await screen.field("container.height_cm").fill("wide");
          await screen.field("container.board_count").fill("900");
          await take("problems");
          await screen.openMenu();
        }
        await screen.button("New plan").click();
      }
      await screen.page.locator(".plans .delete").first().click();
      await take("deleted");
    }
  }
});
console.log(`${count} pictures in ${FOLDER}`);
