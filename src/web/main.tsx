import { render } from 'preact';
import './styles/index.css';
import { App } from './app.tsx';
import { begin } from './state/begin.ts';

render(<App />, document.getElementById('app')!);
void begin();
