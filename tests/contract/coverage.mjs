// Joins the coverage of all test projects: a line or a branch counts as covered when any project covers it.
// Usage: node coverage.mjs DIRECTORY LEAST-LINES LEAST-BRANCHES. Prints the figures and the files that lack most; fails below the least.
import { readFileSync, readdirSync } from 'node:fs';
import { join, sep } from 'node:path';

const [directory, leastLines, leastBranches] = process.argv.slice(2);
const reports = readdirSync(directory, { recursive: true }).filter(f => f.split(sep).at(-1) === 'coverage.json');
const files = new Map();

for (const report of reports) {
  // A module holds files, a file classes, a class methods; a method its lines (hits by number) and its branches.
  for (const module of Object.values(JSON.parse(readFileSync(join(directory, report), 'utf8')))) {
    for (const [path, classes] of Object.entries(module)) {
      const name = path.slice(path.lastIndexOf(`${sep}src${sep}`) + 1);
      const file = files.get(name) ?? files.set(name, { lines: new Map(), branches: new Map() }).get(name);
      const count = (map, key, hits) => map.set(key, (map.get(key) ?? 0) + hits);
      for (const [type, methods] of Object.entries(classes)) {
        for (const [method, { Lines, Branches }] of Object.entries(methods)) {
          for (const [line, hits] of Object.entries(Lines)) count(file.lines, line, hits);
          for (const b of Branches) count(file.branches, [type, method, b.Line, b.Offset, b.Path].join(), b.Hits);
        }
      }
    }
  }
}

const share = maps => {
  const hits = maps.flatMap(m => [...m.values()]);
  const covered = hits.filter(h => h > 0).length;
  return { covered, all: hits.length, percent: hits.length === 0 ? 100 : (100 * covered) / hits.length };
};
const all = [...files.values()];
// Nothing measured is not everything covered: the symbols or the reports are not where they were looked for.
if (all.length === 0) {
  console.error(`${reports.length} reports name no file of src/.`);
  process.exit(1);
}
const lines = share(all.map(f => f.lines));
const branches = share(all.map(f => f.branches));
const figure = ({ covered, all, percent }) => `${percent.toFixed(2)} % (${covered} of ${all})`;

console.log(`Coverage of ${files.size} files by ${reports.length} test projects: lines ${figure(lines)}, branches ${figure(branches)}.`);
const lacking = [...files].map(([name, f]) => ({ name, lines: share([f.lines]), branches: share([f.branches]) }))
  .map(f => ({ ...f, lack: f.lines.all - f.lines.covered + f.branches.all - f.branches.covered }))
  .filter(f => f.lack > 0).sort((a, b) => b.lack - a.lack).slice(0, Number(process.env.LACKING ?? 10));
for (const f of lacking) {
  console.log(`  ${f.name}: ${f.lines.all - f.lines.covered} lines, ${f.branches.all - f.branches.covered} branches`);
}

if (lines.percent < Number(leastLines) || branches.percent < Number(leastBranches)) {
  console.error(`The gate wants ${leastLines} % of lines and ${leastBranches} % of branches.`);
  process.exitCode = 1;
}
