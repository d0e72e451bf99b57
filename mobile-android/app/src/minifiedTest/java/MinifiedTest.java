import static org.junit.Assert.assertNotNull;
import static org.junit.Assert.assertTrue;

import android.app.Activity;
import android.os.Bundle;
import android.os.Looper;
import android.view.View;
import android.view.ViewGroup;
import android.view.accessibility.AccessibilityManager;
import android.view.accessibility.AccessibilityNodeInfo;
import android.view.accessibility.AccessibilityNodeProvider;
import java.io.File;
import java.lang.reflect.Method;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.function.Predicate;
import org.junit.Test;
import org.junit.runner.RunWith;
import org.robolectric.Robolectric;
import org.robolectric.RobolectricTestRunner;
import org.robolectric.RuntimeEnvironment;
import org.robolectric.Shadows;
import org.robolectric.annotation.Config;

/** Drives the app as R8 left it through nothing but names of the framework: as a screen reader would. */
@RunWith(RobolectricTestRunner.class)
@Config(sdk = 35, qualifiers = "w411dp-h891dp-xhdpi")
public class MinifiedTest {
    private static final int NOTHING = Integer.MIN_VALUE;
    private AccessibilityNodeProvider screen;

    /** The view that draws the screens: the one that knows nodes. */
    private static View composed(View view) {
        if (view.getAccessibilityNodeProvider() != null) {
            return view;
        }
        if (view instanceof ViewGroup) {
            ViewGroup group = (ViewGroup) view;
            for (int i = 0; i < group.getChildCount(); i++) {
                View found = composed(group.getChildAt(i));
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    private static int childAt(AccessibilityNodeInfo node, int index) throws Exception {
        Method id = AccessibilityNodeInfo.class.getDeclaredMethod("getChildId", int.class);
        id.setAccessible(true);
        return (int) ((Long) id.invoke(node, index) >> 32);
    }

    private int find(Predicate<AccessibilityNodeInfo> wanted) throws Exception {
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        queue.add(AccessibilityNodeProvider.HOST_VIEW_ID);
        while (!queue.isEmpty()) {
            int id = queue.remove();
            AccessibilityNodeInfo node = screen.createAccessibilityNodeInfo(id);
            if (node == null) {
                continue;
            }
            if (wanted.test(node)) {
                return id;
            }
            for (int i = 0; i < node.getChildCount(); i++) {
                queue.add(childAt(node, i));
            }
        }
        return NOTHING;
    }

    private int await(String what, Predicate<AccessibilityNodeInfo> wanted) throws Exception {
        for (int i = 0; i < 500; i++) {
            Shadows.shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(50));
            int id = find(wanted);
            if (id != NOTHING) {
                return id;
            }
            Thread.sleep(20);
        }
        throw new AssertionError("not on the screen: " + what);
    }

    private int tagged(String tag) throws Exception {
        return await(tag, node -> tag.equals(node.getViewIdResourceName()));
    }

    private static boolean says(AccessibilityNodeInfo node, String words) {
        return node.getText() != null && node.getText().toString().contains(words);
    }

    private void tap(String tag) throws Exception {
        assertTrue(tag, screen.performAction(tagged(tag), AccessibilityNodeInfo.ACTION_CLICK, null));
    }

    @Test
    public void aSiteIsAddedAndKept() throws Exception {
        AccessibilityManager manager = RuntimeEnvironment.getApplication().getSystemService(AccessibilityManager.class);
        Shadows.shadowOf(manager).setEnabled(true);
        Shadows.shadowOf(manager).setTouchExplorationEnabled(true);
        Class<? extends Activity> main = Class.forName("bolewalk.app.MainActivity").asSubclass(Activity.class);
        Activity activity = Robolectric.buildActivity(main).setup().get();
        Shadows.shadowOf(Looper.getMainLooper()).idle();
        View view = composed(activity.getWindow().getDecorView());
        assertNotNull("nothing drawn", view);
        screen = view.getAccessibilityNodeProvider();

        tap("site.add");
        Bundle words = new Bundle();
        words.putCharSequence(AccessibilityNodeInfo.ACTION_ARGUMENT_SET_TEXT_CHARSEQUENCE, "Heron Mill");
        tagged("site.name");
        int field = await("a field to type in", AccessibilityNodeInfo::isEditable);
        assertTrue(screen.performAction(field, AccessibilityNodeInfo.ACTION_SET_TEXT, words));
        await("what was typed", node -> node.isEditable() && says(node, "Heron Mill"));
        tap("form.confirm");
        await("the new site", node -> !node.isEditable() && says(node, "Heron Mill"));

        File book = new File(activity.getFilesDir(), "book");
        String[] files = book.list();
        assertTrue("the core kept nothing", files != null && files.length > 0);
    }
}
