import { render } from 'preact';
import { sceneOf } from './scene-text.ts';
import { WornStage } from './worn-stage.tsx';

/* The script of the page that `bodkin wear` writes: what is shown stands in the page itself, as data. */

const stage = document.getElementById('stage');
const scene = document.getElementById('scene');
if (stage && scene)
  render(
    <WornStage
      scene={sceneOf(scene.textContent ?? '')}
      instead={<p>This browser shows nothing in space. The pictures beside this file show the same.</p>}
    />,
    stage,
  );
