// The dearest requests that are known, of every address that computes: as large as its bounds allow, and shaped so that the most is done.
const list = (count, make) => Array.from({ length: count }, (_, i) => make(i));
const zigzag = count => list(count, i => ({ target: i % 2 ? 1000 : 1222 }));
const wideZigzag = count => list(count, i => ({ target: i % 2 ? 20 : 1290 }));
const log = count => list(count, i => ({ minutes: i, temperature: Math.round(20 + (1200 * i) / count + 30 * (i % 2)) }));
const cones = ["022", "018", "014", "010", "06", "04", "02", "1", "3", "5", "6", "7", "8", "9", "10", "11", "12"];
const observations = list(30, i => ({ cone: cones[i % cones.length], clock: 2 + (i % 37) / 10 }));
const kiln = { heat: "electric", volumeLitres: 150, kilowatts: 11, maxTemperature: 1290, leakFactor: 3 };
const firing = { firingKind: "glaze", cone: "6", atmosphere: "oxidation" };
const checked = { heat: "electric", maxCone: "8", atmospheres: ["oxidation"] };
const csv = (rows, cell) => `minutes,temperature_c\n${list(rows, i => `${i},${cell(i)}`).join("\n")}\n`;
const planned = (pieces, kilns) => JSON.stringify({
  horizon: { from: "2026-12-01T00:00", to: "2027-01-26T00:00" }, timeZone: "Europe/Berlin",
  kilns: list(kilns, i => ({
    kiln: {
      id: `kiln-${i}`, ...checked, interior: { heightMillimetres: 600, diameterMillimetres: 600 },
      shelves: { layers: 6, perLayer: 1, thicknessMillimetres: 20, diameterMillimetres: 540 },
    },
    firings: [
      { firingKind: "bisque", cone: "06", atmosphere: "oxidation", minutes: 1200, kilowattHours: 60 },
      { firingKind: "glaze", cone: "6", atmosphere: "oxidation", minutes: 1320, kilowattHours: 90 },
    ],
  })),
  pieces: list(pieces, i => ({
    piece: {
      id: `p${i}`, body: "mid-range-stoneware-light", state: "bone-dry", use: "decorative",
      size: { heightMillimetres: 80 + (i % 60), widthMillimetres: 80 + (i % 40) },
    },
    then: [{ coats: [{ glaze: "mid-range-gloss" }] }], handlingMinutes: 2880,
  })),
});
// Firings of one kiln as a keeper logs them, with a hold as long as all of them together may last, and a meter that is like no kiln.
const calibrated = (firings, hold, more) => JSON.stringify({
  units: "C", kiln: { heat: "electric", volumeLitres: 150, kilowatts: 9 },
  firings: list(firings, i => ({
    log: list(60, k => {
      const [hours, end] = [((hold + 12) * k) / 59, hold + 4];
      return {
        minutes: Math.round(hours * 60),
        temperature: Math.round(hours < 4 ? 20 + 300 * hours : hours < end ? 1220 : 25 + 1195 * Math.exp((end - hours) / 6)),
      };
    }),
    load: { kilogramsWare: 25 + i }, meterKilowattHours: 700 - 5 * i, ...more(hold),
  })),
});
// As many different pieces, and as many pairs of a piece and a firing, as are judged at once; none that nothing accepts, or all.
const differentPlan = (pieces, kilns, refused) => JSON.stringify({
  horizon: { from: "2026-12-01T00:00", to: "2026-12-08T00:00" }, timeZone: "Europe/Berlin",
  kilns: list(kilns, i => ({
    kiln: {
      id: `kiln-${i}`, heat: "electric", maxCone: "10", atmospheres: ["oxidation"],
      interior: { heightMillimetres: 600 + i, diameterMillimetres: 600 + i },
      shelves: { layers: 6, perLayer: 1, thicknessMillimetres: 20, diameterMillimetres: 540 },
    },
    firings: [
      { firingKind: "bisque", cone: "06", atmosphere: "oxidation", minutes: 1200, kilowattHours: 60 },
      { firingKind: "glaze", cone: "6", atmosphere: "oxidation", minutes: 1320, kilowattHours: 90 },
    ],
  })),
  pieces: list(pieces, i => ({
    piece: {
      id: `p${i}`, body: "mid-range-stoneware-light", state: refused ? "glaze-fired" : "bone-dry", use: "decorative",
      thickestMillimetres: 3 + (i % 400) / 50, size: { heightMillimetres: 20 + (i % 160), widthMillimetres: 20 + Math.floor(i / 40) },
    },
    then: [{ coats: [{ glaze: "mid-range-gloss" }] }], handlingMinutes: 60,
  })),
});
const lines = (count, make) => JSON.stringify({ lines: list(count, make) });

export async function bodies(ids) {
  const [bodyIds, glazes, colorants, schedules] = await Promise.all(["/v1/clay-bodies", "/v1/glazes", "/v1/colorants", "/v1/schedules"].map(ids));
  const piece = (i, coats = 12) => ({
    id: `p${i}`, body: bodyIds[i % bodyIds.length], state: "bisqued", thickestMillimetres: 5 + (i % 90),
    coats: list(coats, k => ({ glaze: glazes[(i * 7 + k * 11) % glazes.length], contains: ["copper", "chrome"] })),
    earlierFirings: [{ firingKind: "bisque", cone: cones[i % 8] }],
  });
  const pairing = i => ({ body: bodyIds[i % bodyIds.length], firing, coats: piece(i).coats });
  const recipe = i => ({ colorants: list(20, k => ({ colorant: colorants[(i + k) % colorants.length], percent: 0.4 })) });
  const fit = i => ({ schedule: schedules[i % schedules.length], cone: cones[i % cones.length] });
  return [
    ["/v1/conversions", "lines", lines(1000, i => ({ temperature: `${600 + i * 0.7}C`, rate: `${15 + i * 0.1}C/h` }))],
    ["/v1/conversions", "wrong lines", lines(1000, i => ({ cone: `x${i}`.repeat(100), rate: "x".repeat(900), chart: "witness-larg".repeat(60) }))],
    ["/v1/conversions", "entries", `{"lines":[${"{},".repeat(1_300_000)}{}]}`],
    ["/v1/conversions", "columns", `cone${",".repeat(4_000_000)}\n6\n`, "text/csv"],
    ["/v1/conversions", "carried columns", `cone,${list(999, i => `c${i}`).join(",")}\n${"6\n".repeat(1000)}`, "text/csv"],
    ["/v1/heat-work", "segments", JSON.stringify({ units: "C", segments: wideZigzag(10_000) })],
    ["/v1/heat-work", "log", JSON.stringify({ units: "C", log: log(80_000) })],
    ["/v1/heat-work", "empty samples", `{"units":"C","log":[${"{},".repeat(1_300_000)}{}]}`],
    ["/v1/heat-work", "uploaded log", csv(300_000, i => 20 + (i / 300) + (i % 2)), "text/csv"],
    ["/v1/heat-work", "uploaded steps", csv(300_000, i => (i % 2 ? 1300 : 20)), "text/csv"],
    ["/v1/heat-work/solve", "segments", JSON.stringify({ units: "C", segments: wideZigzag(10_000), cone: "6", find: "peak" })],
    ["/v1/heat-work/solve", "hold", JSON.stringify({ units: "C", segments: zigzag(9999).concat({ target: 1000 }), cone: "10", find: "hold" })],
    ["/v1/heat-work/compare", "firings", JSON.stringify({ firings: list(50, () => ({ units: "C", segments: wideZigzag(4000), observations })) })],
    ["/v1/heat-work/compare", "observations", JSON.stringify({ firings: list(50, () => ({ units: "C", segments: zigzag(2), observations })) })],
    ["/v1/heat-work/compare", "empty firings", `{"firings":[${"{},".repeat(1_300_000)}{}]}`],
    ["/v1/heat-work/forecast", "log and kiln", JSON.stringify({ units: "C", cone: "10", log: list(60_000, i => ({ minutes: i / 20, temperature: Math.round(200 + i / 5.2) / 10 })), segments: [{ rate: 60, target: 1290, holdMinutes: 10 }], kiln })],
    ["/v1/heat-work/forecast", "segments", JSON.stringify({ units: "C", cone: "10", log: log(300), segments: zigzag(10_000), kiln })],
    ["/v1/schedules/fit/batch", "fits", JSON.stringify({ units: "C", kiln, items: list(100, fit) })],
    ["/v1/schedules/fit/batch", "one fit over", JSON.stringify({ units: "C", kiln, items: list(100, () => ({ schedule: "mid-range-glaze", cone: "6", load: { thickestMillimetres: 100 } })) })],
    ["/v1/schedules/mid-range-glaze/fit", "pieces", JSON.stringify({ units: "C", cone: "6", kiln: { ...kiln, ...checked }, load: { pieces: list(2000, i => piece(i, 4)) } })],
    ["/v1/loads/check", "pieces", JSON.stringify({ kiln: checked, firing, pieces: list(2000, i => piece(i, 4)) })],
    ["/v1/loads/check", "coats", JSON.stringify({ kiln: checked, firing, pieces: list(666, i => piece(i)) })],
    ["/v1/loads/check", "too many coats", JSON.stringify({ kiln: checked, firing, pieces: list(2000, i => piece(i)) })],
    ["/v1/loads/check/batch", "loads", JSON.stringify({ items: list(50, n => ({ kiln: checked, firing, pieces: list(200, i => piece(n * 200 + i, i % 5 ? 0 : 4)) })) })],
    ["/v1/loads/check", "wrong pieces", JSON.stringify({ pieces: list(2000, () => ({ id: 1, count: "x", body: "x".repeat(60), coats: list(12, () => ({ glaze: "x".repeat(60), state: "y", where: "z" })) })) })],
    ["/v1/loads/check", "empty words", `{"kiln":{"heat":"gas","atmospheres":[${"1,".repeat(2_000_000)}1]}}`],
    // A plan takes the time that is asked for, on both cores: what is counted is what it takes beside that.
    ["/v1/plans?seconds=0.5", "pieces", planned(2000, 4)],
    ["/v1/plans?seconds=0.5", "too many pieces", planned(9000, 4)],
    ["/v1/plans?seconds=0.5", "empty pieces", `{"pieces":[${"{},".repeat(1_300_000)}{}]}`],
    ["/v1/plans?seconds=0.5", "different pieces", differentPlan(2500, 20, false)],
    ["/v1/plans?seconds=0.5", "refused pieces", differentPlan(1000, 20, true)],
    ["/v1/plans?seconds=0.5", "too many different pieces", differentPlan(5000, 20, false)],
    ["/v1/kilns/calibrate", "firings", calibrated(30, 14, hold => ({ segments: [{ rate: 300, target: 1220, holdMinutes: hold * 60 }] }))],
    ["/v1/kilns/calibrate", "without segments", calibrated(30, 14, () => ({}))],
    ["/v1/kilns/calibrate", "few long firings", calibrated(3, 250, hold => ({ segments: [{ rate: 300, target: 1220, holdMinutes: hold * 60 }] }))],
    ["/v1/kilns/calibrate", "too many hours", calibrated(30, 40, () => ({}))],
    ["/v1/pairings/check", "coats", JSON.stringify(pairing(0))],
    ["/v1/pairings/check/batch", "pairings", JSON.stringify({ items: list(100, pairing) })],
    ["/v1/colours/resolve", "recipe", JSON.stringify(recipe(0))],
    ["/v1/colours/resolve/batch", "recipes", JSON.stringify({ items: list(100, recipe) })],
    ["/v1/colours/resolve/batch", "wrong recipes", JSON.stringify({ items: list(100, () => ({ colorants: list(20, k => ({ colorant: `koper-oxyde-${k}`.repeat(4), percent: "x" })) })) })],
  ];
}
