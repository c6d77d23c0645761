// Answers as slow as a mobile network of few bars: what Lighthouse calls slow 4G, 1.6 Mbit a second for all answers
// together, and 150 ms until one begins.
const kLatency = 150; // milliseconds
const kBytesEachTurn = 4_000; // 200 kB a second
const kTurn = 20; // milliseconds

const waiting = [];
let clock;

/// One answer after the other is given its share of a turn.
function turn() {
  let left = kBytesEachTurn;
  while (left > 0 && waiting.length > 0) {
    const one = waiting.shift();
    const share = Math.min(left, Math.ceil(kBytesEachTurn / (waiting.length + 1)), one.bytes.length - one.sent);
    one.response.write(one.bytes.subarray(one.sent, one.sent + share));
    one.sent += share;
    left -= share;
    if (one.sent < one.bytes.length) waiting.push(one);
    else one.response.end();
  }
  if (waiting.length > 0) return;
  clearInterval(clock);
  clock = undefined;
}

export async function slowly(response, bytes) {
  await new Promise((next) => setTimeout(next, kLatency));
  if (bytes.length === 0) return response.end();
  waiting.push({ response, bytes, sent: 0 });
  clock ??= setInterval(turn, kTurn);
}
