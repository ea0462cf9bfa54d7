// Holds the code blocks of docs/clients.md against the samples that are compiled and run: after <!-- sample: FILE --> a block is that file.
// node docs.mjs --write puts them there.
import { readFileSync, writeFileSync } from "node:fs";
import { extname } from "node:path";

const root = new URL("../../", import.meta.url);
const document = new URL("docs/clients.md", root);
const languages = { ".cs": "csharp", ".sh": "sh", ".py": "python", ".R": "r", ".html": "html", ".mts": "ts" };
const text = readFileSync(document, "utf8");
let blocks = 0;
const made = text.replace(/<!-- sample: (\S+) -->\n```\w*\n[^]*?\n```\n/g, (_, file) => {
  blocks++;
  return `<!-- sample: ${file} -->\n\`\`\`${languages[extname(file)]}\n${readFileSync(new URL(file, root), "utf8").trimEnd()}\n\`\`\`\n`;
});
const fences = text.match(/^```\w+$/gm)?.length ?? 0;
if (fences !== blocks) {
  console.error(`docs/clients.md has ${fences} code blocks, of which ${blocks} name a sample. None is copied by hand.`);
  process.exit(1);
}
if (process.argv.includes("--write")) writeFileSync(document, made);
else if (made !== text) {
  console.error("docs/clients.md differs from the samples. Run: node samples/clients/docs.mjs --write");
  process.exit(1);
}
