import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fail, ok, type Result } from '../../core/index.ts';
import { packageFile } from '../package-files.ts';
import { answerRequest } from './answer-request.ts';

export interface ServedApp {
  readonly address: string;
  readonly close: () => void;
  readonly closed: Promise<void>;
}

const LOOPBACK = '127.0.0.1';

/** Serves the built app on loopback; port 0 takes any that is free. Fails when the app is not built or the port is taken. */
export async function serveApp(port: number): Promise<Result<ServedApp>> {
  const folder = packageFile('dist/web');
  if (!existsSync(folder)) {
    return fail({ code: 'app.not-built', message: 'The app is not built: run "npm run build" first.' });
  }
  const server = createServer((request, response) => void answerRequest(folder, request, response));
  return new Promise((done) => {
    server.once('error', (cause: NodeJS.ErrnoException) => {
      const message =
        cause.code === 'EADDRINUSE'
          ? `Port ${port} is taken: choose another with --port.`
          : `Port ${port} cannot be used (${cause.code}): choose another with --port.`;
      done(fail({ code: 'app.port', message }));
    });
    server.listen(port, LOOPBACK, () => {
      const address = `http://localhost:${(server.address() as AddressInfo).port}/`;
      const closed = new Promise<void>((end) => server.once('close', end));
      done(ok({ address, close: () => server.close(), closed }));
    });
  });
}
