// A fingerprint of a text: 64 bits of two multiplying mixers. It tells a whole copy from a torn one and an unchanged text
// from a changed one; it keeps nobody out. Made here because the browser's own hashes need a secure context.

const kFirstPrime = 0x9e3779b1;
const kSecondPrime = 0x85ebca77;

function spread(value: number): number {
  const once = Math.imul(value ^ (value >>> 16), 0x7feb352d);
  const twice = Math.imul(once ^ (once >>> 15), 0x846ca68b);
  return (twice ^ (twice >>> 16)) >>> 0;
}

function hex(value: number): string {
  return value.toString(16).padStart(8, "0");
}

/// 16 hexadecimal digits and the length, for any text.
export function fingerprint(text: string): string {
  let first = 0x2545f491;
  let second = 0x6c078965;
  for (let i = 0; i < text.length; ++i) {
    const unit = text.charCodeAt(i);
    first = Math.imul(first ^ unit, kFirstPrime);
    first ^= first >>> 15;
    second = Math.imul(second ^ (unit + i), kSecondPrime);
    second ^= second >>> 13;
  }
  return `${hex(spread(first))}${hex(spread(second))}-${text.length}`;
}
