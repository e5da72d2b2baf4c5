import type { Command } from 'commander';
import { parseCount } from '../../measure/index.ts';
import { serveApp } from '../app/serve-app.ts';
import { type Session, withExample } from '../command.ts';
import { complain, EXIT, type ExitCode, say, type Terminal } from '../terminal.ts';

const USUAL_PORT = 4173;

/** `legwright app`: the app in the browser, served to this computer alone. */
export function addApp(program: Command, session: Session): void {
  const command = program
    .command('app')
    .summary('open the app: draw, pull, check and print in the browser')
    .description(
      'Serves the app to browsers on this computer, to nobody else, until it is stopped. Designs are kept in the browser.',
    )
    .option('--port <number>', 'where to serve it', String(USUAL_PORT))
    .action(async (options: { readonly port: string }) =>
      session.end(await serve(session.terminal, options.port)),
    );
  withExample(command, 'legwright app --port 8080');
}

async function serve(terminal: Terminal, typed: string): Promise<ExitCode> {
  const port = parseCount(typed);
  if (!port.ok || port.value > 65_535) {
    complain(terminal, `--port: found "${typed}", expected a whole number up to 65535.`);
    return EXIT.unusable;
  }
  const served = await serveApp(port.value);
  if (!served.ok) {
    for (const { message } of served.problems) complain(terminal, message);
    return EXIT.unusable;
  }
  say(terminal, `Legwright is at ${served.value.address}`);
  say(terminal, 'It answers this computer alone. Stop it with Ctrl+C.');
  await served.value.closed;
  return EXIT.fine;
}
