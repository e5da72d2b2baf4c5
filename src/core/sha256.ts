/**
 * SHA-256 of a text's UTF-8 bytes, 64 hexadecimal digits. Source: FIPS 180-4, sections 4.1.2, 5 and 6.2. Written out because
 * the platforms' own digests are asynchronous in a browser, and the stages of a computation are not.
 */
export function sha256(text: string): string {
  const words = padded(new TextEncoder().encode(text));
  const hash = Uint32Array.from(INITIAL_HASH);
  const schedule = new Uint32Array(64);
  for (let block = 0; block < words.length; block += 16) {
    schedule.set(words.subarray(block, block + 16));
    compress(hash, schedule);
  }
  return Array.from(hash, (word) => word.toString(16).padStart(8, '0')).join('');
}

/** The message as big-endian words: a 1 bit after it, zeros, and its length in bits (section 5.1.1). */
function padded(bytes: Uint8Array): Uint32Array {
  const words = new Uint32Array(16 * Math.ceil((bytes.length + 9) / 64));
  for (let i = 0; i < bytes.length; i++) words[i >> 2]! |= bytes[i]! << (24 - 8 * (i & 3));
  words[bytes.length >> 2]! |= 0x80 << (24 - 8 * (bytes.length & 3));
  words[words.length - 2] = Math.floor(bytes.length / 0x20000000);
  words[words.length - 1] = bytes.length << 3;
  return words;
}

function compress(hash: Uint32Array, w: Uint32Array): void {
  for (let t = 16; t < 64; t++) {
    const a = w[t - 15]!;
    const b = w[t - 2]!;
    const small0 = turned(a, 7) ^ turned(a, 18) ^ (a >>> 3);
    const small1 = turned(b, 17) ^ turned(b, 19) ^ (b >>> 10);
    w[t] = small1 + w[t - 7]! + small0 + w[t - 16]!;
  }
  let [a, b, c, d, e, f, g, h] = hash as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let t = 0; t < 64; t++) {
    const large1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const first = (h + large1 + ((e & f) ^ (~e & g)) + ROUND_CONSTANTS[t]! + w[t]!) | 0;
    const large0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const second = (large0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  for (const [i, word] of [a, b, c, d, e, f, g, h].entries()) hash[i] = hash[i]! + word;
}

function turned(word: number, by: number): number {
  return (word >>> by) | (word << (32 - by));
}

/** The first `count` primes. */
function primes(count: number): readonly number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) if (found.every((prime) => n % prime !== 0)) found.push(n);
  return found;
}

/** First 32 bits of the fraction, as the standard defines its constants (sections 4.2.2 and 5.3.3). */
function fractionBits(value: number): number {
  return Math.floor((value - Math.floor(value)) * 2 ** 32);
}

const INITIAL_HASH = primes(8).map((prime) => fractionBits(Math.sqrt(prime)));
const ROUND_CONSTANTS = Uint32Array.from(primes(64).map((prime) => fractionBits(Math.cbrt(prime))));
