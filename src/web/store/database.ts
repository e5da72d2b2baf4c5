import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Design } from '../../design/index.ts';
import type { Change } from '../state/history/fold-log.ts';

/** A design in the list; what it has become stands in its log. */
export interface StoredDesign {
  readonly id: string;
  /** As in the design, for the list. */
  readonly name: string;
  readonly form: string;
  /** ISO 8601, with the time. */
  readonly made: string;
  readonly changed: string;
  /** The design as its log begins. */
  readonly base: Design;
  readonly thumbnail?: Thumbnail;
  /** When it was deleted; it can be brought back. */
  readonly deleted?: string;
}

/** A small picture: SVG path data in a view box of its own. */
export interface Thumbnail {
  readonly box: string;
  readonly data: string;
  /** How many findings stopped the design when it was drawn. */
  readonly stops?: number;
}

/** A file that could not be taken in, kept as it came. */
export interface KeptFile {
  readonly id: string;
  readonly name: string;
  readonly file: Blob;
  readonly time: string;
  readonly why: string;
}

/** A line of a design's log; `at` is given by the browser. */
interface LoggedChange extends Change {
  readonly design: string;
  readonly at?: number;
}

interface Stored extends DBSchema {
  designs: { key: string; value: StoredDesign };
  /** The lines of all logs in the order in which they came to the disk, numbered by the browser. */
  changes: { key: number; value: LoggedChange; indexes: { design: string } };
  kept: { key: string; value: KeptFile };
  /** Small things by name: printers, a workshop, photographs under names of their own. */
  things: { key: string; value: unknown };
}

export type Database = IDBPDatabase<Stored>;

const NAME = 'legwright';
const VERSION = 1;

let opened: Promise<Database> | undefined;

/** The database of this browser, opened once. Rejects where the browser keeps none. */
export function database(): Promise<Database> {
  opened ??= openDB<Stored>(NAME, VERSION, {
    upgrade(db) {
      db.createObjectStore('designs', { keyPath: 'id' });
      const changes = db.createObjectStore('changes', { keyPath: 'at', autoIncrement: true });
      changes.createIndex('design', 'design');
      db.createObjectStore('kept', { keyPath: 'id' });
      db.createObjectStore('things');
    },
    // A newer version of the app in another tab must not wait for this one.
    blocking: (_, __, event) => (event.target as IDBDatabase).close(),
    terminated: () => {
      opened = undefined;
    },
  });
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}
