import { makeNoCode } from '@eaveline/job';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './look/tokens.css';
import './look/base.css';
import { layRememberedPaper } from './frame/paper.ts';
import { DeviceNotice } from './offline/DeviceNotice.tsx';
import { keepAppWhenIdle, whenIdle } from './offline/keepAppWhenIdle.ts';
import { UpdateNotice } from './offline/UpdateNotice.tsx';
import { planDesk } from './plan/planDesk.ts';
import { fetchAllParts, fetchFirstPart, router } from './router.tsx';

layRememberedPaper();
makeNoCode(); // the server's policy forbids it
if (location.pathname.startsWith('/job/')) planDesk(); // its worker loads beside the page
const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no element for the page');
const root = createRoot(page);
// drawn without its part, a page would stand empty for a third of a second: so long React holds back what comes later
void fetchFirstPart(location.pathname).finally(() =>
  root.render(
    <StrictMode>
      <RouterProvider router={router} />
      <UpdateNotice />
      <DeviceNotice />
    </StrictMode>,
  ),
);
if (import.meta.env.PROD) keepAppWhenIdle();
addEventListener('load', () => setTimeout(() => whenIdle(() => void fetchAllParts()), 1500), { once: true });
