import { z } from 'zod';

// The page's Content-Security-Policy forbids making code from text. To be imported before anything that makes a schema.
z.config({ jitless: true });
