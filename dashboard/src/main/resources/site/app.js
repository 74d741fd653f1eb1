// Starts the page: defines its elements, then opens the line to the shed.
import { live } from './lib/live.js';
import { defineFrame } from './frame/frame.js';
import { defineRooms } from './rooms/rooms.js';

defineFrame();
defineRooms();
live.start();
