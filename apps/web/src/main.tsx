import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './look/tokens.css';
import './look/base.css';
import { layRememberedPaper } from './frame/paper.ts';
import { DeviceNotice } from './offline/DeviceNotice.tsx';
import { keepAppWhenIdle } from './offline/keepAppWhenIdle.ts';
import { UpdateNotice } from './offline/UpdateNotice.tsx';
import { fetchAllParts, router } from './router.tsx';

layRememberedPaper();
const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no element for the page');
createRoot(page).render(
  <StrictMode>
    <RouterProvider router={router} />
    <UpdateNotice />
    <DeviceNotice />
  </StrictMode>,
);
if (import.meta.env.PROD) keepAppWhenIdle();
// once the page stands; a first sheet waits for none of this
addEventListener('load', () => setTimeout(() => void fetchAllParts(), 1500), { once: true });
