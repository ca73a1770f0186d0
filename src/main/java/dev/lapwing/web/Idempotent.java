package dev.lapwing.web;

import jakarta.interceptor.InterceptorBinding;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a resource method that creates something and answers a {@code Response}: the same Idempotency-Key with the same
 * request gets the first answer again, with another request it is refused. Runs the method in a transaction, so that
 * the key and what was created stand or fall together.
 */
@Inherited
@InterceptorBinding
@Target({ElementType.METHOD, ElementType.TYPE})
@Retention(RetentionPolicy.RUNTIME)
public @interface Idempotent {}
