// Writes ../editor.js and the licences of what is in it. Run by `npm ci` and `npm run build` here.
import { build } from "esbuild";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const here = import.meta.dirname, out = join(here, "..", "editor.js");
const result = await build({
  entryPoints: [join(here, "editor.source.js")],
  outfile: out,
  bundle: true,
  minify: true,
  format: "esm",
  target: "es2022",
  charset: "utf8",
  legalComments: "none",
  metafile: true,
  banner: { js: "// CodeMirror 6 and what it is made of, MIT; see LICENSE-editor.txt. Built by build/build.mjs from build/editor.source.js." },
});

// The packages that came in, each with its own text of the licence.
const packages = [...new Set(Object.keys(result.metafile.inputs).map(path => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1]).filter(Boolean))].sort();
const parts = packages.map(name => {
  const folder = join(here, "node_modules", name), about = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  if (about.license !== "MIT") throw new Error(`${name} is under ${about.license}: look at it before it comes in.`);
  const file = readdirSync(folder).find(entry => /^licen[cs]e/i.test(entry));
  if (!file) throw new Error(`${name} has no text of its licence.`);
  return `${name} ${about.version}\n\n${readFileSync(join(folder, file), "utf8").trim()}\n`;
});
writeFileSync(join(here, "..", "LICENSE-editor.txt"), `editor.js holds these packages.\n\n${parts.join("\n" + "-".repeat(72) + "\n\n")}`);
console.log(`editor.js: ${Math.round(readFileSync(out).length / 1024)} kB, ${packages.length} packages`);
