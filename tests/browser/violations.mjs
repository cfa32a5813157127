// What axe-core finds wrong with the page as it stands.

import axe from "axe-core";
import { plain } from "./screen.mjs";

const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** The violations of WCAG 2.2, levels A and AA. */
export async function violations(screen) {
  await screen.page.evaluate(`globalThis.axe ?? (() => { ${axe.source} })()`);
  const found = await screen.page.evaluate(
    (values) => globalThis.axe.run(document, { runOnly: { type: "tag", values }, resultTypes: ["violations"] }),
    TAGS,
  );
  // One line a rule: how many, and the first of them.
  return found.violations.map(({ id, nodes }) => {
    const [{ target, failureSummary }] = nodes;
    return `${id}, ${nodes.length} times, first ${target.join(" ")}: ${plain(failureSummary)}`;
  });
}
