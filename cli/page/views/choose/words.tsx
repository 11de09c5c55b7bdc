import { type Choice, capital } from '../../../../drafts/index.ts';
import { spoken } from '../../page-words.ts';
import { unlessSame } from '../unless-same.ts';
import { type Asked, Below, sameAsked } from './asked.tsx';
import { Picture, scaleOf } from './pictures.tsx';

/** A choice between words, each with its picture. */
export const Words = unlessSame<Asked<Extract<Choice, { kind: 'word' }>>>((asked) => {
  const { choice, text, pictures = {}, send } = asked;
  const { name, words } = choice;
  const made = text ?? choice.default;
  const drawn = Object.keys(pictures).length > 0;
  const scale = scaleOf(pictures);
  return (
    <fieldset class={drawn ? 'field words drawn' : 'field words'} aria-describedby={`${name}-said`}>
      <legend>{capital(spoken(name))}</legend>
      {words.map((word) => (
        <label key={word}>
          <input
            type="radio"
            name={name}
            checked={word === made}
            onChange={() => send({ does: 'choose', name, text: word })}
          />{' '}
          {word === 'auto' ? 'by itself' : word}
          {pictures[word] && <Picture picture={pictures[word]} scale={scale} />}
        </label>
      ))}
      <Below {...asked} />
    </fieldset>
  );
}, sameAsked);
