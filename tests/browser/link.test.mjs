// A plan travels by link and by code: the same figures in a profile that never saw it, nothing kept
// unasked, and a plain sentence for every link that is none.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import test from "node:test";
import { promisify } from "node:util";
import { EXAMPLES, Screen } from "./screen.mjs";
import { startServer } from "./rig.mjs";

const run = promisify(execFile);
const metric = { context: { locale: "en-GB" } };

/** Opens an address in a fresh profile. */
const openAddress = (t, site, address) => Screen.open(t, { site, path: address.slice(site.url.length), ...metric });

const linkOf = async (screen) => {
  await screen.settled();
  return screen.page.locator("#link").inputValue();
};
const offer = (screen) => screen.page.locator(".offer");

for (const example of EXAMPLES) {
  test(`${example}: a link gives the same figures in a fresh profile, and keeps nothing unasked`, async (t) => {
    const site = await startServer(t);
    const screen = await Screen.open(t, { site, ...metric });
    await screen.openExample(example);
    await screen.planName.fill("Wednesday's group: Σ ½");
    await screen.enter({ "container.pot_height_cm": "3 1/8 in", "crop.target_head_g": "187,5", "climate.humidity_pct": "71.25" });
    const [figures, values, address] = [await screen.figures(), await screen.values(), await linkOf(screen)];
    assert.ok(address.startsWith(`${site.url}#P-`), address);
    assert.ok(address.length < 400, `${address.length} characters`);

    const other = await openAddress(t, site, address);
    await offer(other).waitFor();
    assert.match(await offer(other).innerText(), /Wednesday's group: Σ ½/);
    assert.equal(await other.stored(), null);
    await other.button("Do not keep").click();
    assert.equal(await offer(other).count(), 0);
    assert.equal(await other.stored(), null);

    const third = await openAddress(t, site, address);
    await third.button("Keep as a new plan").click();
    assert.deepEqual(await third.figures(), figures);
    assert.deepEqual(await third.values(), values);
    assert.equal(await linkOf(third), address);
    assert.equal(third.page.url(), site.url);
  });
}

test("a link that arrives while a plan is open does not touch it", async (t) => {
  const screen = await Screen.open(t, metric);
  await screen.openExample("bottle");
  const address = await linkOf(screen);
  await screen.openMenu();
  await screen.button("New plan").click();
  await screen.openExample("covered_tank");
  const before = JSON.parse(await screen.stored()).plans;
  await screen.page.evaluate((hash) => {
    location.hash = hash;
  }, new URL(address).hash);
  await offer(screen).waitFor();
  assert.deepEqual(JSON.parse(await screen.stored()).plans, before);
  await screen.button("Keep as a new plan").click();
  const after = JSON.parse(await screen.stored()).plans;
  assert.deepEqual(after.slice(0, 2), before);
  assert.equal(after.length, 3);
});

const broken = {
  "a letter changed": (link) => `${link.slice(0, 8)}${link[8] === "Z" ? "Y" : "Z"}${link.slice(9)}`,
  "cut off": (link) => link.slice(0, -1),
  "nothing behind the mark": () => "P-",
  "far too long": () => `P-${"0".repeat(3000)}`,
  "no link at all": () => "what-is-this",
  "escapes and signs": () => "P-%00%FF<script>",
};
for (const [what, change] of Object.entries(broken)) {
  test(`a damaged link, ${what}: a plain sentence, and the page works`, async (t) => {
    const site = await startServer(t);
    const screen = await Screen.open(t, { site, path: `#${change("P-0405HGH3QR")}`, ...metric });
    await offer(screen).waitFor();
    assert.match(await offer(screen).innerText(), /link/);
    await offer(screen).getByRole("button", { name: "Close" }).click();
    await screen.openExample("bucket");
    assert.match((await screen.figures()).fill, /below the rim/);
  });
}

test("copying puts the link on the clipboard; where that is refused, the field is selected", async (t) => {
  const screen = await Screen.open(t, { ...metric, context: { ...metric.context, permissions: ["clipboard-read", "clipboard-write"] } });
  await screen.openExample("bucket");
  await screen.button("Copy link").click();
  await screen.page.getByText("Copied.", { exact: true }).waitFor();
  assert.equal(await screen.page.evaluate(() => navigator.clipboard.readText()), await linkOf(screen));
  await screen.page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException("no", "NotAllowedError"));
  });
  await screen.button("Copy link").click();
  await screen.focusMoves("link");
});

test("sharing hands name and link to the system", async (t) => {
  const screen = await Screen.open(t, {
    ...metric,
    before: (page) =>
      page.addInitScript(() => {
        navigator.share = async (data) => {
          window.shared = data;
        };
      }),
  });
  await screen.openExample("bucket");
  await screen.button("Share").click();
  assert.deepEqual(await screen.page.evaluate(() => window.shared), {
    title: await screen.planName.inputValue(),
    url: await linkOf(screen),
  });
});

for (const example of EXAMPLES) {
  for (const format of ["A4", "Letter"]) {
    test(`${example}: the code on the printed card (${format}, 150 dpi) is exactly the link`, async (t) => {
      const screen = await Screen.open(t, metric);
      await screen.openExample(example);
      await screen.planName.fill("A longer name, for a larger code: the second tank");
      const { pages, file } = await screen.printCard(format);
      assert.equal(pages.length, 1);
      await run("pdftoppm", ["-r", "150", "-png", "-singlefile", file, file.slice(0, -4)]);
      const { stdout } = await run("zbarimg", ["--quiet", "--raw", `${file.slice(0, -4)}.png`]);
      assert.equal(stdout.trim(), await linkOf(screen));
      // At least half a millimetre for a module, the quiet zone of four around it.
      const [wide, modules] = await screen.page
        .locator(".card .code")
        .evaluate((code) => [code.width.baseVal.valueInSpecifiedUnits, code.viewBox.baseVal.width]);
      assert.ok(wide / modules >= 0.5, `${wide} mm for ${modules} modules`);
    });
  }
}
