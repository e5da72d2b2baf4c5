import type { ComponentType } from 'preact';
import { lazy, Suspense } from 'preact/compat';
import { design } from '../state/current.ts';
import type { Screen } from '../state/screen.ts';
import { words } from '../words/en.ts';

/** Each screen is fetched when it is first shown, or about to be. */
const FROM: Readonly<Record<Screen, () => Promise<ComponentType>>> = {
  shape: async () => (await import('./shape/shape-screen.tsx')).ShapeScreen,
  joints: async () => (await import('./joints/joints-screen.tsx')).JointsScreen,
  wood: async () => (await import('./wood/wood-screen.tsx')).WoodScreen,
  routing: async () => (await import('./routing/routing-screen.tsx')).RoutingScreen,
  sheets: async () => (await import('./sheets/sheets-screen.tsx')).SheetsScreen,
  book: async () => (await import('./book/book-screen.tsx')).BookScreen,
  study: async () => (await import('./study/study-screen.tsx')).StudyScreen,
  'own-shape': async () => (await import('./own-shape/own-shape-screen.tsx')).OwnShapeScreen,
  designs: async () => (await import('./designs/designs-screen.tsx')).DesignsScreen,
};

const SCREENS = Object.fromEntries(
  Object.entries(FROM).map(([name, from]) => [name, lazy(async () => ({ default: await from() }))]),
) as unknown as Readonly<Record<Screen, ComponentType>>;

/** Fetches what a screen is made of, before it is shown. */
export function fetchScreen(name: Screen): void {
  FROM[name]().catch(() => undefined);
}

export function ScreenOf({ name }: { readonly name: Screen }) {
  const Shown = SCREENS[name];
  if (name !== 'designs' && name !== 'own-shape' && design.value === undefined) {
    return <p class="waiting">{words.noDesign}</p>;
  }
  return (
    <Suspense fallback={<p class="waiting">{words.loading}</p>}>
      <Shown />
    </Suspense>
  );
}
