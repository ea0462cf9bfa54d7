// Where a cone goes down, °C, from the service; its printed points from the data of the package when the service is away:
// node end-point.mjs 6 60C/h
import { AwayError, coneClient, RefusedError } from "coneservice";
import type { Tables } from "coneservice/tables";
import points from "coneservice/data/end-points.json" with { type: "json" };

declare const process: { argv: string[]; env: Record<string, string | undefined>; exitCode: number };

const [cone = "", rate = ""] = process.argv.slice(2);
// Nobody looks at a page here: it may take longer than the usual second.
const client = coneClient(process.env["CONESERVICE"] ?? "http://localhost:5000", { attemptMilliseconds: 5_000, totalMilliseconds: 15_000 });
try {
  const answer = await client.get("/v1/cones/{cone}/end-point", { path: { cone }, query: { rate } });
  console.log(`cone ${answer.cone} at ${answer.rateCelsiusPerHour} °C/h: ${answer.celsius} °C, ${answer.confidence}`);
} catch (failure) {
  process.exitCode = 1;
  // Field, value, what is allowed, and the likely mistake of each finding.
  if (failure instanceof RefusedError) for (const finding of failure.problem.errors) console.log(finding.code, finding.message);
  else if (failure instanceof AwayError) {
    // A cone is text: "06" is not "6".
    const rows: Tables["end-points"] = points;
    for (const row of rows.filter((point) => point.cone === cone)) console.log(`${row.chart}: ${row.celsius} °C (${row.confidence})`);
  } else throw failure;
}
