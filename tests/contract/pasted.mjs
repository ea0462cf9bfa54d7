// The lines that /cards gives to paste, through what course systems do to them: a strict list of what may stay (sanitize-html), and the
// same by DOMPurify in a browser, which the tests of pages run.
import assert from 'node:assert/strict';
import sanitize from 'sanitize-html';

const base = process.env.CONESERVICE;
const host = new URL(base).hostname;

// As course systems have it: no script, no style, no form; frames only from hosts that the administrator allows.
const allowed = (hosts) => ({
  allowedTags: ['p', 'a', 'strong', 'em', 'ul', 'li', 'img', 'iframe'],
  allowedAttributes: {
    a: ['href'], img: ['src', 'alt', 'width', 'height'], iframe: ['src', 'width', 'height', 'title', 'loading'],
  },
  allowedIframeHostnames: hosts,
});

const plain = (html) => html.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&#39;', "'")
  .replaceAll('&amp;', '&');

let tried = 0;
for (const card of ['convert', 'chart', 'cone-06', 'process/raku-western', 'fit', 'schedule/bisque-careful?cone=06']) {
  const page = await (await fetch(`${base}/cards?card=${encodeURIComponent(card)}`)).text();
  const lines = [...page.matchAll(/<textarea[^>]*>([^<]*)<\/textarea>/g)].map((m) => plain(m[1]));
  assert.ok(lines.length >= 8, `${card}: ${lines.length} lines`);
  for (const line of lines) {
    const kept = sanitize(line, allowed([host]));
    const address = plain(/(?:src|href)="([^"]+)"/.exec(line)[1]);
    assert.ok(plain(kept).includes(address), `${card}: ${line} became ${kept}`);
    if (line.startsWith('<iframe')) {
      assert.match(kept, /title="[^"]+"/);
      // Where the host is not allowed, nothing is left but an empty frame: the index says so.
      assert.ok(!sanitize(line, allowed(['example.org'])).includes(address));
    }
    if (line.startsWith('<img')) assert.match(kept, /alt="[^"]+"/);
    const answer = await fetch(address);
    assert.equal(answer.status, 200, address);
    tried++;
  }
}

console.log(`${tried} pasted lines live through sanitize-html, and their addresses answer.`);
