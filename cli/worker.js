// Threads start without the parent's loader, so each registers TypeScript for itself.
import { register } from 'tsx/esm/api';

register();
await import('./worker-main.ts');
