import { render } from 'preact';
import './styles/index.css';
import { App } from './app.tsx';
import { begin } from './state/begin.ts';
import { keepForOffline } from './state/offline.ts';

render(<App />, document.getElementById('app')!);
void begin();
void keepForOffline();
