// Holds every crate that the lock file names to the licences and the one source that this project
// takes; build tools and test crates included. Usage: node .tools/dependencies.mjs
// Known vulnerabilities are not looked up: that needs a list from the network at each run.

import { execFileSync } from "node:child_process";

// Each lets anyone use, change and hand on the page under the project's own licences.
const LICENCES = new Set(["MIT", "Apache-2.0", "BSL-1.0", "CC0-1.0", "Unicode-3.0", "Unlicense", "Zlib", "BSD-3-Clause"]);
const SOURCE = "registry+https://github.com/rust-lang/crates.io-index";

/** Whether an SPDX expression can be met with the licences above; `/` is the old way to write OR. */
export function permitted(expression) {
  const words = expression.replaceAll("/", " OR ").match(/[()]|[^\s()]+/g) ?? [];
  let at = 0;
  const one = () => {
    if (words[at] !== "(") return LICENCES.has(words[at++]);
    at += 1;
    const inside = either();
    if (words[at++] !== ")") throw new Error(`unreadable licence: ${expression}`);
    return inside;
  };
  const both = () => {
    let good = one();
    while (words[at] === "AND") good = (at++, one()) && good;
    return good;
  };
  const either = () => {
    let good = both();
    while (words[at] === "OR") good = (at++, both()) || good;
    return good;
  };
  if (words.length === 0) return false;
  const good = either();
  if (at !== words.length) throw new Error(`unreadable licence: ${expression}`);
  return good;
}

// A check that lets everything through would not be noticed.
for (const [expression, good] of [
  ["MIT OR GPL-3.0-only", true],
  ["MIT AND GPL-3.0-only", false],
  ["(MIT OR GPL-3.0-only) AND Unicode-3.0", true],
  ["GPL-3.0-only", false],
  ["", false],
]) {
  if (permitted(expression) !== good) throw new Error(`the check misjudges '${expression}'`);
}

const metadata = JSON.parse(
  execFileSync("cargo", ["metadata", "--locked", "--format-version", "1"], { maxBuffer: 1 << 28, stdio: ["ignore", "pipe", "inherit"] }),
);
const others = metadata.packages.filter((crate) => !metadata.workspace_members.includes(crate.id));
const wrong = others.flatMap(({ name, version, license, source }) => [
  ...(permitted(license ?? "") ? [] : [`${name} ${version}: licence '${license}' is not on the list`]),
  ...(source === SOURCE ? [] : [`${name} ${version}: comes from ${source ?? "a folder"}`]),
]);
for (const line of wrong) console.error(line);
console.log(`${others.length} crates, ${wrong.length === 0 ? "all" : "not all"} from the registry and under a licence on the list`);
process.exitCode = wrong.length === 0 ? 0 : 1;
