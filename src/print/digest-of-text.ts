/**
 * A short fingerprint of a text, 16 hexadecimal digits: two 32-bit lanes of multiply-and-shift mixing. Tells texts
 * apart (one chance in 10^19 for a pair to agree); it is no protection against forgery.
 */
export function digestOfText(text: string): string {
  let a = 0x9e3779b9;
  let b = 0x7f4a7c15;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x85ebca6b);
    a ^= a >>> 13;
    b = Math.imul(b ^ code, 0xc2b2ae35) + 0x27d4eb2f;
    b ^= b >>> 16;
  }
  a = Math.imul(a ^ (b >>> 15), 0x2c1b3c6d);
  b = Math.imul(b ^ (a >>> 14), 0x297a2d39);
  return hex(a ^ (a >>> 16)) + hex(b ^ (b >>> 15));
}

function hex(lane: number): string {
  return (lane >>> 0).toString(16).padStart(8, '0');
}
