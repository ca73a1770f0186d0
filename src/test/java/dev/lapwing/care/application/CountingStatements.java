package dev.lapwing.care.application;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;

/** Counts how often statements are sent over a connection; a batch of one statement counts once. */
final class CountingStatements {
    private int sent;

    int sent() {
        return sent;
    }

    Connection over(Connection real) {
        return proxy(Connection.class, (proxy, method, arguments) -> {
            Object result = call(real, method, arguments);
            return result instanceof PreparedStatement statement ? counted(statement) : result;
        });
    }

    private PreparedStatement counted(PreparedStatement real) {
        return proxy(PreparedStatement.class, (proxy, method, arguments) -> {
            if (method.getName().startsWith("execute")) {
                sent++;
            }
            return call(real, method, arguments);
        });
    }

    private static Object call(Object target, Method method, Object[] arguments) throws Throwable {
        try {
            return method.invoke(target, arguments);
        } catch (InvocationTargetException failure) {
            throw failure.getCause();
        }
    }

    private static <T> T proxy(Class<T> type, InvocationHandler handler) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler));
    }
}
