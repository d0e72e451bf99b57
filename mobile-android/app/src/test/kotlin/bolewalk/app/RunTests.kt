package bolewalk.app

import java.util.Locale
import kotlin.system.exitProcess
import org.junit.runner.Description
import org.junit.runner.JUnitCore
import org.junit.runner.Request
import org.junit.runner.notification.Failure
import org.junit.runner.notification.RunListener

/** Runs the named test classes, or `Class#method`, for tools/build.py; Gradle has a runner of its own. */
object RunTests {
    @JvmStatic
    fun main(names: Array<String>) {
        val count = Count()
        val core = JUnitCore().apply { addListener(count) }
        for (name in names) {
            val owner = Class.forName(name.substringBefore('#'), false, javaClass.classLoader)
            core.run(if ('#' in name) Request.method(owner, name.substringAfter('#')) else Request.aClass(owner))
        }
        println("${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped")
        exitProcess(if (count.failed > 0 || count.passed == 0) 1 else 0)
    }

    private class Count : RunListener() {
        var passed = 0
        var failed = 0
        var skipped = 0
        private var began = 0L
        private var went = true

        override fun testStarted(test: Description) {
            began = System.nanoTime()
            went = true
        }

        override fun testFailure(failure: Failure) {
            went = false
            failed++
            // Of the trace only our own part tells anything.
            val lines = failure.trace.lineSequence().filter { "\tat " !in it || "at bolewalk." in it }
            println("FAILED ${failure.description.displayName}\n" + lines.take(30).joinToString("\n"))
        }

        override fun testAssumptionFailure(failure: Failure) {
            went = false
            skipped++
        }

        override fun testIgnored(test: Description) {
            skipped++
        }

        override fun testFinished(test: Description) {
            if (!went) return
            passed++
            println(String.format(Locale.ROOT, "ok: %s, %.1f s", test.displayName, (System.nanoTime() - began) / 1e9))
        }
    }
}
