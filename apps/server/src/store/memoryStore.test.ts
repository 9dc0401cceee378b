import { acceptJobStore } from '../../test/acceptJobStore.ts';
import { memoryStore } from './memoryStore.ts';

acceptJobStore('memory', memoryStore);
