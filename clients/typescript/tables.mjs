// Splits the data package, which is one JSON document, into a file a table, and writes the types of their rows:
// node tables.mjs DATAPACKAGE.JSON MADE
import { readFileSync, rmSync, writeFileSync } from "node:fs";

const [descriptor, made] = process.argv.slice(2);
const { resources } = JSON.parse(readFileSync(descriptor, "utf8"));
const { tables, ...about } = JSON.parse(readFileSync(`${made}/data/all.json`, "utf8"));
rmSync(`${made}/data/all.json`);

const types = ["// The rows of each table of the data package. A cone is text: 06 and 6 are more than two hundred degrees apart.", ""];
const kinds = { integer: "number", number: "number", list: "string[]" };
for (const [name, rows] of Object.entries(tables)) {
  const { description, schema } = resources.find((resource) => resource.name === name);
  types.push(`/** ${description} */`, `export interface ${pascal(name)}Row {`);
  for (const field of schema.fields) {
    const list = field.type === "list" || field.itemDelimiter !== undefined;
    const kind = list ? "string[]" : kinds[field.type] ?? "string";
    const required = field.constraints?.required || schema.primaryKey.includes(field.name);
    types.push(`  /** ${field.description} */`, `  ${field.name}: ${kind}${required ? "" : " | null"};`);
    for (const row of rows) check(name, field.name, row[field.name], kind, required);
  }
  types.push("}", "");
  // A row a line, so that what changed between two versions can be seen.
  writeFileSync(`${made}/data/${name}.json`, `[\n${rows.map((row) => JSON.stringify(row)).join(",\n")}\n]\n`);
}
types.push("/** Rows by the name of their table, which is that of its file: data/glazes.json. */", "export interface Tables {");
for (const name of Object.keys(tables)) types.push(`  "${name}": ${pascal(name)}Row[];`);
types.push("}", "");
writeFileSync(`${made}/tables.d.ts`, types.join("\n"));
writeFileSync(`${made}/data/package.json`, `${JSON.stringify({ ...about, tables: Object.keys(tables) }, null, 2)}\n`);

function pascal(name) {
  return name.replace(/(^|-)(.)/g, (_, __, letter) => letter.toUpperCase());
}

function check(table, field, value, kind, required) {
  const found = value === null ? "null" : Array.isArray(value) ? "string[]" : typeof value;
  if (found !== kind && !(found === "null" && !required)) throw new Error(`${table}.${field} has ${JSON.stringify(value)}, no ${kind}.`);
}
