// Questions as GIFT text, read by a parser that is not ours: every question comes back with four choices, one of them right, and the same
// words as in the JSON. CONESERVICE: address of the service.
import { parse } from "gift-pegjs";

const service = process.env.CONESERVICE;
const wrong = [];
let read = 0;
for (const seed of [1, 2, 3, 4, 5]) {
  const asked = `?count=100&seed=${seed}`;
  const [text, json] = await Promise.all([
    fetch(`${service}/v1/questions.gift${asked}`).then((r) => r.text()),
    fetch(`${service}/v1/questions${asked}`).then((r) => r.json()),
  ]);
  const questions = parse(text).filter((q) => q.type !== "Description");
  if (questions.length !== json.items.length) wrong.push(`seed ${seed}: ${questions.length} of ${json.items.length} questions`);
  for (const [i, q] of questions.entries()) {
    const own = json.items[i];
    const right = own.choices.find((c) => c.letter === own.right).text;
    const told = (q.choices ?? []).map((c) => c.text.text);
    if (q.type !== "MC" || q.title !== own.id || q.stem.text !== own.name) wrong.push(`${own.id}: ${q.type} ${q.title} ${q.stem?.text}`);
    if (told.join("|") !== own.choices.map((c) => c.text).join("|")) wrong.push(`${own.id}: ${told.join("|")}`);
    const marked = (q.choices ?? []).filter((c) => c.isCorrect).map((c) => c.text.text);
    if (marked.length !== 1 || marked[0] !== right) wrong.push(`${own.id}: right is ${marked}`);
    if (!q.globalFeedback?.text.includes("Source:")) wrong.push(`${own.id}: no reason`);
    read++;
  }
}
if (wrong.length > 0) {
  console.error(wrong.slice(0, 20).join("\n"));
  process.exit(1);
}
console.log(`${read} questions read from GIFT.`);
