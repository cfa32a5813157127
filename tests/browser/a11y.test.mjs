// No violation of WCAG 2.2, levels A and AA, that axe-core can find, in any state of the page; and no
// sideways scrolling down to 320 px.

import assert from "node:assert/strict";
import test from "node:test";
import { DESKTOP, PHONE, TABLET } from "./rig.mjs";
import { EXAMPLES, Screen, STEPS } from "./screen.mjs";
import { violations } from "./violations.mjs";

const SEEN = ["bucket", "floating_boards", "covered_tank"];

// Choices of the fertilizer step that bring out what the ready plans leave unused.
const CHEMISTRY = {
  bucket: {
    "fertilizer.water_kind": "analysis",
    "fertilizer.water.alkalinity_mg_per_l_caco3": "320",
    "fertilizer.label.nitrogen_pct": "12",
    "fertilizer.acid": "nitric",
  },
  floating_boards: {
    "fertilizer.dosing": "salts",
    "fertilizer.salts[12].salt-own": "K2SO4",
    "fertilizer.salts[13].salt-own": "no formula at all",
    "fertilizer.salts[3].purity_pct": "much",
    "fertilizer.acid": "citric",
  },
  // An alarm, and a cover that asks for props.
  covered_tank: { "build.prop_rows": "0", "build.stands_on": "balcony_or_roof" },
};

/** Brings the page into each of its states in turn. */
async function eachState(screen, look) {
  await look("first page");
  for (const key of SEEN) {
    await screen.openExample(key);
    for (const step of STEPS) {
      await screen.goTo(step);
      await look(`${key}, ${step}`);
    }
    await screen.unfoldAll();
    await look(`${key}, unfolded`);
    await screen.enter(CHEMISTRY[key]);
    // What has only now come is still folded.
    await screen.unfoldAll();
    await look(`${key}, ${Object.keys(CHEMISTRY[key]).at(-1)}`);
    await screen.goTo("container");
    await screen.field("container.height_cm").fill("1e300");
    await screen.field("container.pot_height_cm").fill("a rather long word that is no number");
    await look(`${key}, problems`);
    await screen.openMenu();
    await look(`${key}, menu`);
    await screen.button("New plan").click();
  }
  await look("first page with plans");
  await screen.page.locator(".plans .delete").first().click();
  await look("a plan deleted");
}

for (const colorScheme of ["light", "dark"]) {
  for (const viewport of [PHONE, TABLET]) {
    test(`axe, ${colorScheme}, ${viewport.width} wide`, async (t) => {
      const screen = await Screen.open(t, { viewport, colorScheme, context: { locale: "en-GB" } });
      const found = [];
      await eachState(screen, async (state) => {
        for (const violation of await violations(screen)) found.push(`${state}: ${violation}`);
      });
      assert.deepEqual(found, []);
    });
  }
}

test("axe finds what is wrong", async (t) => {
  const screen = await Screen.open(t);
  await screen.page.evaluate(() => document.querySelector("main").append(document.createElement("button")));
  assert.match((await violations(screen)).join("\n"), /^button-name, 1 times/m);
});

for (const width of [320, 390, 810, 1440]) {
  test(`nothing sticks out at ${width}`, async (t) => {
    const screen = await Screen.open(t, { viewport: { width, height: 900 } });
    const found = [];
    await eachState(screen, async (state) => {
      if (await screen.overflows()) found.push(state);
    });
    assert.deepEqual(found, []);
  });
}

test("the page has a title, a language, one first heading, and no heading skipped", async (t) => {
  const screen = await Screen.open(t);
  await screen.openExample("bucket");
  const { lang, title, levels } = await screen.page.evaluate(() => ({
    lang: document.documentElement.lang,
    title: document.title,
    levels: [...document.querySelectorAll("h1, h2, h3, h4")]
      .filter((heading) => heading.checkVisibility())
      .map((heading) => Number(heading.localName[1])),
  }));
  assert.equal(lang, "en");
  assert.notEqual(title, "");
  assert.equal(levels.filter((level) => level === 1).length, 1);
  levels.forEach((level, index) => assert.ok(level - (levels[index - 1] ?? 0) <= 1, levels.join()));
});

for (const viewport of [{ width: 320, height: 800 }, PHONE, TABLET, { width: 1080, height: 810 }, DESKTOP]) {
  test(`every value is seen whole in its box at ${viewport.width}`, async (t) => {
    const screen = await Screen.open(t, { viewport, context: { locale: "en-GB" } });
    for (const key of EXAMPLES) {
      await screen.openExample(key);
      const cut = [];
      for (const step of STEPS) {
        await screen.goTo(step);
        await screen.unfoldAll();
        // A pixel of rounding.
        const found = await screen.page.evaluate(() =>
          [...document.querySelectorAll(".step:not([hidden]) input[type=text]")]
            .filter((box) => box.checkVisibility() && box.scrollWidth > box.clientWidth + 1)
            .map((box) => `${box.id}: ${box.value}`),
        );
        cut.push(...found);
      }
      assert.deepEqual(cut, [], key);
      await screen.openMenu();
      await screen.button("New plan").click();
    }
  });
}
