// Several plans on one device, and units that change what is shown and nothing else.

import assert from "node:assert/strict";
import test from "node:test";
import { TODAY } from "./rig.mjs";
import { EXAMPLES, idOf, plain, Screen, STORE } from "./screen.mjs";

const metric = { context: { locale: "en-GB" } };

test("plans are named, copied, opened, deleted and brought back", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.planName.fill("First");
  const [figures, values] = [await screen.figures(), await screen.values()];

  await screen.openMenu();
  await screen.button("Make a copy").click();
  assert.equal(await screen.planName.inputValue(), "First (copy)");
  assert.deepEqual(await screen.values(), values);
  await screen.planName.fill("Second");
  await screen.field("container.body_height_cm").fill("25");
  const second = await screen.figures();
  assert.notDeepEqual(second, figures);

  await screen.openMenu();
  await screen.button("New plan").click();
  assert.deepEqual(await screen.planList(), ["First", "Second"]);
  await screen.openExample("covered_tank");
  await screen.planName.fill("");
  await screen.openMenu();
  assert.deepEqual(await screen.planList(), ["First", "Second", "Plan without a name"]);
  assert.equal(await screen.page.locator(".plan[aria-current]").innerText(), "Plan without a name");

  await screen.button("First").click();
  assert.deepEqual(await screen.figures(), figures);
  assert.deepEqual(await screen.values(), values);

  // Another plan, then the open one.
  const before = await screen.stored();
  await screen.openMenu();
  await screen.button("Delete Second").click();
  assert.match(await screen.notices.innerText(), /Second/);
  await screen.openMenu();
  assert.deepEqual(await screen.planList(), ["First", "Plan without a name"]);
  await screen.openMenu({ open: false });
  await screen.button("Undo").click();
  assert.equal(await screen.planName.inputValue(), "Second");
  assert.deepEqual(await screen.figures(), second);
  assert.deepEqual(JSON.parse(await screen.stored()).plans, JSON.parse(before).plans);
  assert.doesNotMatch(await screen.notices.innerText(), /Second/);

  await screen.openMenu();
  await screen.button("Delete Second").click();
  await screen.page.locator("button.example").first().waitFor();
  assert.deepEqual(await screen.planList(), ["First", "Plan without a name"]);
  await screen.reload();
  assert.deepEqual(await screen.planList(), ["First", "Plan without a name"]);
  await screen.button("First").click();
  assert.deepEqual(await screen.values(), values);
});

test("the menu of plans closes once a plan is chosen, and with Escape", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.openMenu();
  await screen.page.locator(".sheet .plan").click();
  assert.equal(await screen.menu.evaluate((menu) => menu.open), false);
  await screen.openMenu();
  await screen.page.keyboard.press("Tab");
  await screen.page.keyboard.press("Escape");
  assert.equal(await screen.menu.evaluate((menu) => menu.open), false);
  assert.ok(await screen.menu.locator("summary").evaluate((summary) => summary === document.activeElement));
});

test("a half-typed plan never shows the figures of another", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.field("container.diameter_cm").fill("");
  await screen.openMenu();
  await screen.button("New plan").click();
  await screen.openExample("bucket");
  const bucket = await screen.figures();
  await screen.openMenu();
  await screen.page.locator(".sheet .plan").first().click();
  assert.ok(await screen.printButton.isDisabled());
  assert.notDeepEqual(await screen.figures(), bucket);
  assert.equal(await screen.field("container.diameter_cm").inputValue(), "");
});

test("other units show other numbers and change no plan", async (t) => {
  for (const key of EXAMPLES) {
    const screen = await Screen.open(t, metric);
    await screen.openExample(key);
    // A value that no rounded number of inches stands for, and one that is no number.
    await screen.unfold("container.pot_height_cm");
    await screen.field("container.pot_height_cm").fill("5.1234567");
    await screen.field("container.count").fill("1,0");
    await screen.chooseUnits("metric");
    await screen.page.keyboard.press("Tab");
    const seen = async () => ({
      values: await screen.values(),
      figures: await screen.figures(),
      card: await screen.cardLines(),
      text: await screen.resultText(),
      stored: await screen.stored(),
    });
    const before = await seen();
    await screen.chooseUnits("us");
    const us = await seen();
    assert.notDeepEqual(us.values, before.values);
    assert.match(us.figures.fill, / in below the rim$/);
    assert.match(us.figures.left, / (gal|fl oz)$/);
    // Doses are weighed in grams or measured in litres everywhere; the other unit stands beside.
    assert.match(us.figures.dose, /(g|L) \(/);
    const units = /"units":"\w*"/;
    assert.match(us.stored, /"units":"us"/);
    assert.equal(us.stored.replace(units, ""), before.stored.replace(units, ""));
    await screen.chooseUnits("metric");
    assert.deepEqual(await seen(), before);

    await screen.chooseUnits("us");
    await screen.reload();
    assert.deepEqual(await seen(), us);
  }
});

test("a bare number is read in the units that are shown, a typed unit always wins", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  await screen.chooseUnits("us");
  await screen.type("container.height_cm", "14");
  await screen.type("container.top_diameter_cm", "30 cm");
  await screen.page.keyboard.press("Tab");
  assert.equal(await screen.field("container.top_diameter_cm").inputValue(), "11.81");
  await screen.chooseUnits("metric");
  assert.equal(await screen.field("container.height_cm").inputValue(), "35.56");
  assert.equal(await screen.field("container.top_diameter_cm").inputValue(), "30");
  const { plan } = JSON.parse(await screen.stored(STORE)).plans[0];
  assert.equal(plan.container.height_cm, 14 * 2.54);
});

test("the first units follow the browser's region, later ones the grower", async (t) => {
  for (const [locale, units] of [["en-US", "us"], ["en-GB", "metric"], ["de-DE", "metric"], ["es-MX", "metric"]]) {
    const screen = await Screen.open(t, { context: { locale } });
    assert.equal(await screen.page.locator("#units").inputValue(), units, locale);
    await screen.openExample("bottle");
    assert.match((await screen.figures()).fill, units === "us" ? / in / : / cm /);
    await screen.chooseUnits("us");
    await screen.reload();
    assert.equal(await screen.page.locator("#units").inputValue(), "us");
  }
});

test("a plan of one's own begins today", async (t) => {
  const screen = await Screen.open(t, { context: { locale: "en-GB", timezoneId: "Pacific/Auckland" } });
  await screen.startOwn();
  const today = await screen.page.evaluate(() => {
    const now = new Date();
    return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
  });
  assert.equal(await screen.field("crop.date").inputValue(), today);
  assert.equal(await screen.summary.count(), 0);
  // Whoever begins has no seedlings: the day is that of sowing, and nothing is to be said against it.
  assert.equal(await screen.field("crop.date_meaning").inputValue(), "seeding");
  assert.equal(await screen.problem("crop.date").innerText(), "");
});

for (const key of EXAMPLES) {
  test(`a ready plan is sown today: ${key}`, async (t) => {
    const screen = await Screen.open(t, metric);
    await screen.openExample(key);
    assert.equal(await screen.field("crop.date").inputValue(), "2027-01-22");
    assert.equal(await screen.field("crop.date_meaning").inputValue(), "seeding");
    assert.equal(await screen.problem("crop.date").innerText(), "");
    assert.equal((await screen.events())[0].date, "1 Feb 2027");
  });
}

test("a crowded bucket under a solid roof is mended by one tap each, and back", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  await screen.goTo("climate");
  await screen.enter({ "climate.shelter": "porch" });
  const finding = (text) => screen.page.locator(".findings li", { hasText: text });
  const strong = finding("The solution gets strong");
  await strong.locator(".mend").getByText("Set 2 plants in a container").click();
  await strong.waitFor({ state: "detached" });
  assert.equal(await screen.field("crop.plants_per_container").inputValue(), "2");
  await screen.page.locator("#unmend").click();
  await strong.waitFor();
  assert.equal(await screen.field("crop.plants_per_container").inputValue(), "3");

  // What helps stands under the large figures too, once each, with its own way back.
  const helps = screen.page.locator(".cautions-below .mend");
  assert.deepEqual((await helps.allInnerTexts()).map((text) => text.replace(/\d+%/, "…")), ["Set 2 plants in a container", "If you have rain water: use …"]);
  await helps.first().click();
  await screen.focusMoves("unmend");
  await strong.waitFor({ state: "detached" });
  await screen.page.locator(".cautions-below #unmend").click();
  await screen.focusMoves("cautions");
  await strong.waitFor();

  // The share of rain that the finding names stands beside the list of acids too.
  const alkaline = finding(/pH \d.* after mixing/);
  const share = /^If you have rain water: use (\d+)%$/.exec(await alkaline.locator(".mend").innerText())[1];
  await screen.goTo("fertilizer");
  assert.match(await screen.problem("fertilizer.acid").innerText(), new RegExp(`Rain water for ${share}% of the water brings the pH down too`));
  await alkaline.locator(".mend").click();
  await alkaline.waitFor({ state: "detached" });
  assert.equal(await screen.field("fertilizer.rain_pct").inputValue(), share);
  assert.equal(await screen.problem("fertilizer.acid").innerText(), "");
  const litres = Number(/([\d.]+)\sL of it is rain water/.exec(await screen.text())[1]);
  const whole = Number(/([\d.]+)\sL of the [\d.]+\sL to the brim/.exec(await screen.text())[1]);
  // Both as shown, to a tenth of a litre.
  assert.ok(Math.abs(litres - (whole * Number(share)) / 100) <= 0.1, `${litres} of ${whole}`);
});

test("a ready plan stands where the first page was told", async (t) => {
  const screen = await Screen.open(t, metric);
  const place = screen.page.locator("#standing");
  await place.selectOption("porch");
  await screen.openExample("bucket");
  assert.equal(await screen.field("climate.shelter").inputValue(), "porch");
  assert.equal(await screen.field("climate.light_through_pct").inputValue(), "35");
  // In so little light the charge of three would end too strong.
  assert.equal(await screen.field("crop.plants_per_container").inputValue(), "2");
  assert.deepEqual((await screen.findings()).filter(({ text }) => /gets strong|No single strength/.test(text)), []);
  await screen.openMenu();
  await screen.button("New plan").click();
  await place.selectOption("");
  await screen.openExample("bucket");
  assert.equal(await screen.field("crop.plants_per_container").inputValue(), "3");
});

test("what the figures are for stands above them, each a way to its field", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  const basis = screen.page.locator(".basis button");
  const said = async () => (await basis.allInnerTexts()).map(plain);
  assert.deepEqual(await said(), [
    "Container 35 cm deep inside",
    "Leaf lettuce",
    "3 plants in a container",
    "Sow today, 22 Jan 2027",
    "10-8-22",
    "Tap water",
    "Mild humid coast",
    "Clear roof, open sides",
  ]);
  for (const [index, path] of [
    "container.shape",
    "crop.kind",
    "crop.plants_per_container",
    "crop.date",
    "fertilizer.blend",
    "fertilizer.water_kind",
    "climate.kind",
    "climate.shelter",
  ].entries()) {
    await basis.nth(index).click();
    await screen.focusMoves(idOf(path));
  }
  await screen.enter({
    "crop.plants_per_container": "2",
    "crop.date": "2027-02-03",
    "climate.shelter": "porch",
    "fertilizer.dosing": "stocks",
  });
  const now = await said();
  assert.equal(now[3], "Sow on 3 Feb 2027");
  assert.equal(now[2], "2 plants in a container");
  assert.equal(now[4], "Stock solutions A and B");
  assert.equal(now[7], "Porch under a solid roof");
  // Over a rectangle the spacing says how many there are.
  await screen.openMenu();
  await screen.button("New plan").click();
  await screen.openExample("floating_boards");
  assert.equal((await said())[2], "144 plants in a container");
  await basis.nth(2).click();
  await screen.focusMoves(idOf("crop.spacing_along_cm"));
});

test("a date from the calendar is the date of the plan", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  await screen.goTo("crop");
  await screen.enter({ "crop.date_meaning": "transplanting" });
  await screen.page.getByLabel("Pick the date from a calendar").fill("2027-05-01");
  assert.equal(await screen.field("crop.date").inputValue(), "2027-05-01");
  assert.equal((await screen.events())[0].date, "1 May 2027");
  // What the picker cannot show stays in the box.
  await screen.type("crop.date", "2027-02-30");
  assert.match(await screen.problem("crop.date").innerText(), /2027-02-30/);
  assert.equal(await screen.page.getByLabel("Pick the date from a calendar").inputValue(), "");
  await screen.page.getByLabel("Pick the date from a calendar").fill("2027-05-01");
  assert.equal((await screen.events())[0].date, "1 May 2027");
});

test("the glossary leads back to the step, and a sowing day far off is said", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.button("Start from what I have").click();
  await screen.goTo("crop");
  await screen.page.locator(".step:not([hidden]) .explain").click();
  await screen.page.locator(".glossary .chapter").first().waitFor();
  await screen.button("Back to the plan").click();
  await screen.focusMoves("step-2");

  const day = (from) => {
    const date = new Date(TODAY + from * 24 * 3600 * 1000);
    const two = (number) => String(number).padStart(2, "0");
    return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  };
  const said = screen.page.locator("#crop-date-problem").filter({ hasText: "more than a month away" });
  // Days away from the limit of 31, whatever the hour. Of transplanting, sowing is earlier by the age of
  // the seedlings.
  for (const meaning of ["seeding", "transplanting"]) {
    await screen.enter({ "crop.date_meaning": meaning });
    const age = meaning === "seeding" ? 0 : Number(await screen.field("crop.seedling_age_days").inputValue());
    await screen.field("crop.date").fill(day(age + 40));
    await said.waitFor();
    await screen.field("crop.date").fill(day(age + 29));
    await said.waitFor({ state: "hidden" });
  }
});

test("the form that was waited for takes the focus from nobody who is already typing", async (t) => {
  // Frames far apart, as on a busy device: the form arrives between the tap and the frame after it.
  const slow = (page) =>
    page.addInitScript(() => {
      window.requestAnimationFrame = (draw) => setTimeout(() => draw(performance.now()), 400);
    });
  const gate = {};
  gate.open = new Promise((open) => (gate.lift = open));
  const screen = await Screen.open(t, {
    ...metric,
    before: async (page) => {
      await slow(page);
      await page.route(/\/plan-[^/]*\.wasm$/, async (route) => {
        await gate.open;
        await route.continue();
      });
    },
  });
  await screen.page.evaluate(() => {
    addEventListener("focusin", ({ target }) => {
      if (target.id === "step-1") document.querySelector("#plan-name").focus();
    });
  });
  await screen.button("Start from what I have").click();
  gate.lift();
  await screen.focusMoves("plan-name");
  await screen.planName.fill("Mine");
  // Three frames.
  await screen.page.evaluate(() => {
    window.taken = [];
    addEventListener("focusin", ({ target }) => window.taken.push(target.id));
  });
  await screen.page.waitForTimeout(1_500);
  assert.deepEqual(await screen.page.evaluate(() => window.taken), []);
});

test("the cautions are counted under the figures, and one tap away", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bucket");
  const cautions = (await screen.findings()).filter(({ weight }) => weight === "Take care").length;
  assert.ok(cautions > 1);
  const way = screen.page.locator(".cautions-below a");
  assert.equal(await way.innerText(), `${cautions} cautions: see the checks below`);
  const address = screen.page.url();
  await way.click();
  await screen.focusMoves("findings");
  assert.equal(screen.page.url(), address, "the address holds the plan");

  // Two plants have more than is usual for each: said, and no caution.
  await screen.enter({ "crop.plants_per_container": "2" });
  const plenty = (await screen.findings()).filter(({ text }) => /of solution for each plant/.test(text));
  assert.deepEqual(plenty.map(({ weight }) => weight), ["Good"]);
  assert.match(plenty[0].text, /More does no harm/);
});
