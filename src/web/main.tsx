import { render } from 'preact';
import './styles/index.css';
import { App } from './app.tsx';
import { listenForUndo } from './frame/undo-keys.ts';
import { begin } from './state/begin.ts';
import { keepForOffline } from './state/offline.ts';

render(<App />, document.getElementById('app')!);
listenForUndo();
void begin();
void keepForOffline();
