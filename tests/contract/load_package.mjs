// The whole package in other people's tools: the published profiles and the reader of the standard, DuckDB, and the codes of UCUM.
// The profiles are those that npm carries, of the standard's first version; the types used are those that both versions have.
import { DuckDBInstance } from "@duckdb/node-api";
import ucum from "@lhncbc/ucum-lhc";
import datapackage from "datapackage";
import { readFile } from "node:fs/promises";

const { Package, Profile } = datapackage;
const path = "data/datapackage.json";
const wrong = [];
const check = (sound, what) => { if (!sound) wrong.push(what); };
const descriptor = JSON.parse(await readFile(path, "utf8"));

for (const name of ["data-package", "tabular-data-package"])
  (await Profile.load(name)).validate(descriptor).errors.forEach((e) => check(false, `${name}: ${e.message}`));

// A list is text with a delimiter told beside it: the first version has no type for one, and no published profile has.
const sql = { string: "VARCHAR", number: "DOUBLE", integer: "BIGINT" };
const units = ucum.UcumLhcUtils.getInstance();
const isUnit = (code) => units.validateUnitString(code).status === "valid";
for (const { name, schema } of descriptor.resources) {
  for (const field of schema.fields) {
    const at = `${name}.${field.name}`;
    check(field.type in sql, `${at}: type ${field.type}`);
    if (field.type !== "string") {
      const other = schema.fields.find((f) => f.name === field.unitField);
      check(field.unit ? isUnit(field.unit) : other?.unitCodes, `${at}: unit ${field.unit}`);
    }

    for (const [word, code] of Object.entries(field.unitCodes ?? {})) check(isUnit(code), `${at}: ${word} is ${code}`);
  }
}

const loaded = await Package.load(path, { strict: true });
check(loaded.valid, `reader: ${loaded.errors.map((e) => e.message).join("; ")}`);
const duck = await (await DuckDBInstance.create()).connect();
let rows = 0;
for (const resource of loaded.resources) {
  const { schema } = resource.descriptor;
  let read = [];
  try {
    read = await resource.read({ keyed: true, relations: true });
  } catch (e) {
    check(false, `${resource.name}: ${[e, ...(e.errors ?? [])].map((x) => x.message).join("; ")}`);
  }

  rows += read.length;
  for (const key of schema.primaryKey) check(read.every((r) => r[key] !== null), `${resource.name}.${key}: blank in the key`);
  for (const field of schema.fields.filter((f) => f.unitCodes)) {
    const unknown = read.map((r) => r[field.name]).filter((w) => w !== null && !(w in field.unitCodes));
    check(unknown.length === 0, `${resource.name}.${field.name}: no code for ${[...new Set(unknown)].join(", ")}`);
  }

  const columns = schema.fields.map((f) => `'${f.name}': '${sql[f.type]}'`).join(", ");
  const counted = await duck.runAndReadAll(
    `SELECT count(*)::INTEGER, count(DISTINCT (${schema.primaryKey.map((k) => `"${k}"`).join(", ")}))::INTEGER ` +
    `FROM read_csv('data/${resource.descriptor.path}', header = true, columns = {${columns}})`);
  const [all, keys] = counted.getRows()[0];
  check(all === read.length && keys === read.length, `${resource.name}: ${read.length} rows, to DuckDB ${all} with ${keys} keys`);
}

if (wrong.length > 0) throw new Error(wrong.join("\n"));
console.log(`${descriptor.resources.length} tables, ${rows} rows, zeros kept`);
