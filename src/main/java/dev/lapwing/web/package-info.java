/** The page shell, shared fragments and error answers. Every area's pages stand on it; it uses no area. */
package dev.lapwing.web;
