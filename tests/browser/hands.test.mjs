// For hands that would rather tap than type, and for who does not know a figure.

import assert from "node:assert/strict";
import test from "node:test";
import { open } from "./chemistry.mjs";
import { PHONE, TABLET } from "./rig.mjs";
import { plain } from "./screen.mjs";

const touch = (viewport) => ({ viewport, touch: true, context: { locale: "en-GB" } });

test("buttons beside a field take it a step up and down, in the units shown", async (t) => {
  const screen = await open(t, "bucket", {}, touch(TABLET));
  const box = screen.field("container.pot_immersion_cm");
  await screen.unfold("container.pot_immersion_cm", { touch: true });
  await box.fill("2.7");
  const [less, more] = ["less", "more"].map((way) => screen.button(`Pot foot in solution at planting: ${way}`));
  for (const [button, value] of [[more, "3"], [more, "3.5"], [less, "3"], [less, "2.5"]]) {
    await button.tap();
    assert.equal(await box.inputValue(), value);
  }
  for (const button of [less, more]) {
    const { width, height } = await button.boundingBox();
    assert.ok(width >= 44 && height >= 44, `${width} × ${height}`);
  }
  await screen.chooseUnits("us");
  await more.tap();
  assert.equal(await box.inputValue(), "1");
});

test("arrow keys do the same, and stop at the limits", async (t) => {
  const screen = await open(t, "bucket");
  await screen.goTo("fertilizer");
  const box = screen.field("fertilizer.target_ec_ms_per_cm");
  await box.fill("7.9");
  for (const value of ["8", "8", "8"]) {
    await box.press("ArrowUp");
    assert.equal(await box.inputValue(), value);
  }
  await box.press("ArrowDown");
  assert.equal(await box.inputValue(), "7.9");
  // A tape is read to the millimetre; such fields are typed only.
  await screen.goTo("container");
  const typed = screen.field("container.pot_height_cm");
  await screen.unfold("container.pot_height_cm");
  const before = await typed.inputValue();
  await typed.press("ArrowUp");
  assert.equal(await typed.inputValue(), before);
});

test("a figure that is not known is left empty: a usual one stands in and is named", async (t) => {
  const screen = await open(t, "bucket");
  await screen.enter({ "crop.target_head_g": "", "crop.growth_factor": "" });
  assert.equal(await screen.summary.count(), 0);
  const says = async (path) => plain(await screen.problem(path).innerText());
  assert.equal(await says("crop.target_head_g"), "Left empty: 200 g is taken, as is usual.");
  assert.equal(await says("crop.growth_factor"), "Left empty: 0.75 is taken, as is usual.");
  const figures = await screen.figures();
  await screen.enter({ "crop.target_head_g": "200", "crop.growth_factor": "0.75" });
  assert.deepEqual(await screen.figures(), figures);
  // Only a tape knows how high a container is.
  await screen.enter({ "container.height_cm": "" });
  assert.equal(await screen.summary.locator("a").count(), 1);
});

test("numbers stay whole between their buttons on a phone", async (t) => {
  const screen = await open(t, "floating_boards", {}, touch(PHONE));
  for (const step of ["container", "crop", "fertilizer", "climate"]) {
    await screen.goTo(step);
    const cut = await screen.page.locator(".box input[type=text]:visible").evaluateAll((all) =>
      all.filter((box) => box.scrollWidth > box.clientWidth).map((box) => box.id),
    );
    assert.deepEqual(cut, []);
  }
});
