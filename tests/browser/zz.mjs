import { onItsOwn, PHONE, TABLET, DESKTOP } from "./rig.mjs";
import { Screen, STEPS, EXAMPLES } from "./screen.mjs";
await onItsOwn(async (t) => {
  for (const viewport of [PHONE, TABLET, {width:1080,height:810}, DESKTOP]) {
    const s = await Screen.open(t, { viewport, context: { locale: "en-GB" } });
    for (const e of ["bucket","floating_boards"]) {
    await s.openExample(e);
    for (const step of STEPS) { await s.goTo(step); await s.page.evaluate(()=>{for (const f of document.querySelectorAll(".forms details")) f.open=true});
      const cut = await s.page.evaluate(() => [...document.querySelectorAll(".step:not([hidden]) input[type=text]")].filter(i => i.checkVisibility() && i.scrollWidth > i.clientWidth + 1).map(i => `${i.id}=${i.value} ${i.clientWidth}<${i.scrollWidth}`));
      console.log(viewport.width, e, step, cut.join("; "));
    }
    if (viewport===TABLET && e==="bucket") {await s.goTo("crop"); await s.page.screenshot({path:"/tmp/z.png", clip:{x:0,y:0,width:400,height:1080}});}
    await s.openMenu(); await s.button("New plan").click();
    }
  }
});
