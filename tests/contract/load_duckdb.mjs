// DuckDB: all_varchar, or types for the cone columns; its own guess makes numbers of a column that looks like numbers.
import { DuckDBInstance } from "@duckdb/node-api";

const connection = await (await DuckDBInstance.create()).connect();
const value = async (sql) => (await connection.runAndReadAll(sql)).getRows()[0][0];
const cells = "read_csv('data/end-points.csv', types = {'cone': 'VARCHAR'})";
const at = (cone) => `SELECT celsius::INTEGER FROM ${cells} WHERE chart = 'witness-self-supporting' AND cone = '${cone}' AND rate_celsius_per_hour = 60`;
if ((await value(at("06"))) !== 998 || (await value(at("6"))) !== 1222) throw new Error("zeros lost");
const order = await value(`SELECT string_agg(cone, ',' ORDER BY cone_rank) FROM ${cells} WHERE chart = 'witness-self-supporting' AND rate_celsius_per_hour = 60 AND cone IN ('6', '06', '05.5', '1')`);
if (order !== "06,05.5,1,6") throw new Error(`order lost: ${order}`);

const careless = await value("SELECT count(*)::INTEGER FROM read_csv('data/process-additions.csv') WHERE cone_low::VARCHAR LIKE '0%'");
if (careless !== 0) throw new Error("careless keeps them");
console.log("zeros kept");
