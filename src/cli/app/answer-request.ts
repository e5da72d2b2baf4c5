import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff': 'font/woff',
  '.wasm': 'application/wasm',
};

/** Nothing leaves the page, and nothing comes in but the app's own files; text never becomes code. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const HEADERS = {
  'Content-Security-Policy': POLICY,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
} as const;

/** Answers one request from the files of a folder. Names with a hash in them never change and may be kept for ever. */
export async function answerRequest(
  folder: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const end = (status: number, words: string): void => {
    response.writeHead(status, { ...HEADERS, 'Content-Type': 'text/plain; charset=utf-8' }).end(words);
  };
  // Another site that points a name of its own at this computer is not answered.
  if (!/^(localhost|127\.0\.0\.1)(:\d+)?$/.test(request.headers.host ?? ''))
    return end(403, 'Not for this host.');
  if (request.method !== 'GET' && request.method !== 'HEAD') return end(405, 'Only GET is answered.');
  const file = fileOf(folder, request.url ?? '/');
  const facts = file === undefined ? undefined : await stat(file).catch(() => undefined);
  if (file === undefined || !facts?.isFile()) return end(404, 'There is no such file.');
  const isHashed = /-[\w-]{8}\.\w+$/.test(file);
  response.writeHead(200, {
    ...HEADERS,
    'Content-Type': KINDS[extname(file)] ?? 'application/octet-stream',
    'Content-Length': facts.size,
    'Cache-Control': isHashed ? 'public, max-age=31536000, immutable' : 'no-cache',
  });
  if (request.method === 'HEAD') response.end();
  else createReadStream(file).pipe(response);
}

/** The file that a path names, never one outside the folder. */
function fileOf(folder: string, url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
    const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
    return file.startsWith(folder + sep) && !file.includes('\0') ? file : undefined;
  } catch {
    return undefined;
  }
}
