// The native command, to hold what the page shows to it.

import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const COMMAND = ["run", "--locked", "--quiet", "--no-default-features", "--bin", "slackwater-solve", "--"];

/** What the command answers to a JSON text. */
export const answer = (json, ...options) =>
  new Promise((resolve, reject) => {
    const child = execFile("cargo", [...COMMAND, ...options], { cwd: ROOT, maxBuffer: 2 ** 28 }, (error, out, err) =>
      error ? reject(new Error(err)) : resolve(JSON.parse(out)),
    );
    child.stdin.end(json);
  });

/** What the command answers to the page's open plan. */
export async function solved(screen, ...options) {
  const store = JSON.parse(await screen.stored());
  const { plan } = store.plans.find((kept) => kept.id === store.open);
  return answer(JSON.stringify(plan), ...options);
}
