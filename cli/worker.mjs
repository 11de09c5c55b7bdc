// Threads start without the loader of their parent, so where tsx reads file by file each registers it for itself.
import { register } from 'tsx/esm/api';

register();
await import('./worker-main.ts');
