const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Bytes in the alphabet for addresses of RFC 4648, section 5, without padding. */
export function toBase64url(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const [a, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const four = [a! >> 2, ((a! & 3) << 4) | (b >> 4), ((b & 15) << 2) | (c >> 6), c & 63];
    text += four
      .slice(0, Math.min(3, bytes.length - at) + 1)
      .map((each) => SIGNS[each])
      .join('');
  }
  return text;
}

/** The bytes of such a text; a last sign that carries no whole byte is dropped. Throws on any other sign. */
export function fromBase64url(text: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (const sign of text) {
    const value = SIGNS.indexOf(sign);
    if (value < 0) throw new RangeError(`${sign} is not of the alphabet`);
    held = ((held << 6) | value) & 0xffffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (held >> bits) & 0xff;
  }
  return bytes;
}
